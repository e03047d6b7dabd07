package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneId;
import quarterlight.visit.TestCars;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** Made walks whose truth is known: panels photographed and measured one after the other, in either order. */
class ReadingPlacesTest {
    private static final LocalDateTime START = LocalDateTime.parse("2026-05-02T10:00:00");
    private static final List<ZoneId> PANELS = List.of(
                    "hood",
                    "fender-left",
                    "door-front-left",
                    "quarter-left",
                    "decklid",
                    "quarter-right",
                    "door-front-right",
                    "fender-right",
                    "roof")
            .stream()
            .map(ZoneId::new)
            .toList();

    private final List<Photo> photos = new ArrayList<>();
    private final List<Recorded<Pin>> pins = new ArrayList<>();
    private final List<LocalDateTime> readings = new ArrayList<>();
    private final List<ZoneId> truth = new ArrayList<>();

    private void photo(LocalDateTime time, ZoneId zone) {
        int number = photos.size() + 1;
        CaptureTime captured = new CaptureTime(time, "", Optional.empty(), CaptureSource.ORIGINAL, false);
        PhotoFile file = new PhotoFile(
                number + ".jpg",
                "originals/" + number + ".jpg",
                new Sha256(String.format("%064x", number)),
                1,
                MediaKind.PHOTO,
                "JPEG",
                MediaHeader.NONE.withCaptured(Optional.of(captured)),
                OptionalDouble.empty(),
                List.of(),
                MediaFacts.NONE);
        photos.add(new Photo(new PhotoId(number), file, Optional.empty()));
        Pin pin = VisitParts.pin(new PhotoId(number), zone);
        pins.add(new Recorded<>(new RecordId(number), pin));
    }

    private void reading(LocalDateTime time, ZoneId zone) {
        readings.add(time);
        truth.add(zone);
    }

    private VisitRecord visit() {
        return new VisitParts(TestCars.coupe(ZoneOffset.UTC))
                .photos(photos)
                .pins(pins)
                .record();
    }

    private List<ReadingPlaces.Place> places() {
        return ReadingPlaces.of(visit(), CorrectedTimes.of(visit()), readings, Set.copyOf(PANELS));
    }

    private void walk(boolean photoFirst, long seed) {
        Random random = new Random(seed);
        LocalDateTime now = START;
        for (ZoneId panel : PANELS) {
            if (photoFirst) {
                photo(now, panel);
                now = now.plusSeconds(5 + random.nextInt(25));
            }
            int count = 3 + random.nextInt(6);
            for (int i = 0; i < count; i++) {
                reading(now, panel);
                now = now.plusSeconds(3 + random.nextInt(5));
            }
            if (!photoFirst) {
                now = now.plusSeconds(5 + random.nextInt(20));
                photo(now, panel);
            }
            now = now.plusSeconds(10 + random.nextInt(30));
        }
    }

    private double right(List<ZoneId> said) {
        long right = 0;
        for (int i = 0; i < truth.size(); i++) {
            right += truth.get(i).equals(said.get(i)) ? 1 : 0;
        }
        return (double) right / truth.size();
    }

    /** The plain way: the photo nearest in time. */
    private ZoneId nearest(LocalDateTime time) {
        Photo photo = photos.stream()
                .min(Comparator.comparing(one -> Duration.between(
                                one.file().captured().orElseThrow().time(), time)
                        .abs()))
                .orElseThrow();
        return pins.get((int) photo.id().value() - 1).value().zone();
    }

    @ParameterizedTest
    @CsvSource({"true, 1", "true, 2", "true, 3", "false, 1", "false, 2", "false, 3"})
    void aWalkOfEitherHabitIsPlacedBetterThanByTheNearestPhoto(boolean photoFirst, long seed) {
        walk(photoFirst, seed);
        List<ReadingPlaces.Place> places = places();
        assertThat(places).hasSameSizeAs(readings);
        double ours = right(places.stream().map(ReadingPlaces.Place::zone).toList());
        double plain = right(readings.stream().map(this::nearest).toList());
        assertThat(ours).isGreaterThanOrEqualTo(0.95).isGreaterThan(plain);
    }

    @Test
    void theOrderInWhichReadingsComeDoesNotMatter() {
        walk(true, 4);
        Map<LocalDateTime, ZoneId> straight = places().stream()
                .collect(Collectors.toMap(
                        place -> readings.get(place.reading()), ReadingPlaces.Place::zone, (a, b) -> a));
        java.util.Collections.reverse(readings);
        places().forEach(place -> assertThat(place.zone()).isEqualTo(straight.get(readings.get(place.reading()))));
    }

    @Test
    void farFromAnyPhotoNothingIsSuggested() {
        photo(START, PANELS.get(0));
        reading(START.plusSeconds(8), PANELS.get(0));
        reading(START.plusMinutes(20), PANELS.get(1));
        List<ReadingPlaces.Place> places = places();
        assertThat(places).hasSize(1);
        assertThat(places.get(0).reading()).isZero();
        assertThat(places.get(0).photo()).isEqualTo(new PhotoId(1));
        assertThat(places.get(0).away()).isEqualTo(Duration.ofSeconds(8));
    }

    @Test
    void halfwayBetweenTwoPanelsTheShareSaysSo() {
        photo(START, PANELS.get(0));
        photo(START.plusSeconds(60), PANELS.get(1));
        reading(START.plusSeconds(30), PANELS.get(0));
        assertThat(places().get(0).share()).isLessThan(0.6);
        photo(START.plusSeconds(25), PANELS.get(0));
        assertThat(places().get(0).share()).isGreaterThan(0.6);
        assertThat(places().get(0).zone()).isEqualTo(PANELS.get(0));
    }

    @Test
    void pinsToWhatTheGaugeIsNotHeldToSayNothing() {
        photo(START, new ZoneId("engine"));
        reading(START.plusSeconds(5), PANELS.get(0));
        assertThat(places()).isEmpty();
    }

    /** The rule of docs/methods/thickness.md: e to the minus gap over 60 s; an end counts two standard errors, what no photo shows a tenth. */
    @ParameterizedTest
    @CsvSource({"30", "0", "120", "600"})
    void onePhotoBeforeWeighsByItsGapAgainstElsewhere(double gap) {
        photo(START, PANELS.get(0));
        reading(START.plusSeconds((long) gap), PANELS.get(0));
        double said = 1 / (1 + Math.exp(-2)) * Math.exp(-gap / 60);
        assertThat(places().get(0).share()).isCloseTo(said / (said + 0.1 * (1 - said)), within(1e-9));
        assertThat(places().get(0).away()).isEqualTo(Duration.ofSeconds((long) gap));
    }

    @Test
    void onePhotoAfterWeighsTheSame() {
        reading(START, PANELS.get(0));
        photo(START.plusSeconds(30), PANELS.get(0));
        double said = 1 / (1 + Math.exp(-2)) * Math.exp(-0.5);
        assertThat(places().get(0).share()).isCloseTo(said / (said + 0.1 * (1 - said)), within(1e-9));
        assertThat(places().get(0).away()).isEqualTo(Duration.ofSeconds(30));
    }

    @Test
    void aPhotoOfTwoPanelsSpeaksHalfForEach() {
        photo(START, PANELS.get(0));
        pins.add(new Recorded<>(new RecordId(99), VisitParts.pin(new PhotoId(1), PANELS.get(1))));
        reading(START, PANELS.get(0));
        double all = 1 / (1 + Math.exp(-2));
        assertThat(places().get(0).share()).isCloseTo(all / 2 / (all + 0.1 * (1 - all)), within(1e-9));
    }

    /** One run between two photos: nearer by 20 s is a third of the 60 s that stand for the error of a single run. */
    @Test
    void theNearerOfTwoPhotosSpeaksMoreAndMostRunsTellWhoComesFirst() {
        photo(START, PANELS.get(0));
        reading(START.plusSeconds(20), PANELS.get(0));
        photo(START.plusSeconds(60), PANELS.get(1));
        double habit = 1 / (1 + Math.exp(-20.0 / 60));
        double before = habit * Math.exp(-20.0 / 60);
        double after = (1 - habit) * Math.exp(-40.0 / 60);
        assertThat(places().get(0).share())
                .isCloseTo(before / (before + after + 0.1 * (1 - before - after)), within(1e-9));
        assertThat(places().get(0).zone()).isEqualTo(PANELS.get(0));
    }

    @Test
    void twoRunsTellTheHabitByTheirMeanInStandardErrors() {
        photo(START, PANELS.get(0));
        reading(START.plusSeconds(10), PANELS.get(0));
        photo(START.plusSeconds(50), PANELS.get(1));
        reading(START.plusSeconds(60), PANELS.get(1));
        photo(START.plusSeconds(80), PANELS.get(2));
        // the photo before is nearer by 30 s and by 10 s: mean 20, standard error 10
        double habit = 1 / (1 + Math.exp(-2));
        double before = habit * Math.exp(-10.0 / 60);
        double after = (1 - habit) * Math.exp(-20.0 / 60);
        assertThat(places().get(1).share())
                .isCloseTo(before / (before + after + 0.1 * (1 - before - after)), within(1e-9));
    }

    /** Four times the median gap, at least 20 s and at most 60 s, is no pause yet; a second more is. */
    @ParameterizedTest
    @CsvSource({"1, 20, 21", "5, 20, 21", "8, 32, 33", "15, 60, 61", "30, 60, 61"})
    void aPauseEndsARun(int gap, int together, int apart) {
        for (int last : new int[] {together, apart}) {
            photos.clear();
            pins.clear();
            readings.clear();
            photo(START, PANELS.get(0));
            for (int i = 0; i < 4; i++) {
                reading(START.plusSeconds(7 + (long) i * gap), PANELS.get(0));
            }
            reading(START.plusSeconds(7 + 3L * gap + last), PANELS.get(0));
            long away = last == together ? 7 : 7 + 3L * gap + last;
            assertThat(places().get(4).away()).isEqualTo(Duration.ofSeconds(away));
            assertThat(places().get(3).away()).isEqualTo(Duration.ofSeconds(7));
        }
    }

    @ParameterizedTest
    @CsvSource({"600, 1", "601, 0"})
    void beyondTenMinutesBeforeOrAfterNothingIsSuggested(int seconds, int suggested) {
        photo(START, PANELS.get(0));
        reading(START.plusSeconds(seconds), PANELS.get(0));
        assertThat(places()).hasSize(suggested);
        readings.set(0, START.minusSeconds(seconds));
        assertThat(places()).hasSize(suggested);
    }

    @Test
    void aPhotoBetweenTwoReadingsEndsARunAndOneAtTheSameMomentIsBeforeIt() {
        photo(START, PANELS.get(0));
        reading(START.plusSeconds(10), PANELS.get(0));
        photo(START.plusSeconds(12), PANELS.get(1));
        reading(START.plusSeconds(12), PANELS.get(1));
        List<ReadingPlaces.Place> places = places();
        assertThat(places.get(1).photo()).isEqualTo(new PhotoId(2));
        assertThat(places.get(1).away()).isEqualTo(Duration.ZERO);
    }

    /** Nearer by 30, 10 and 20 s: mean 20, standard error 10 over the root of 3. */
    @Test
    void threeRunsTellTheHabitByTheirStandardError() {
        photo(START, PANELS.get(0));
        reading(START.plusSeconds(10), PANELS.get(0));
        photo(START.plusSeconds(50), PANELS.get(1));
        reading(START.plusSeconds(60), PANELS.get(1));
        photo(START.plusSeconds(80), PANELS.get(2));
        reading(START.plusSeconds(90), PANELS.get(2));
        photo(START.plusSeconds(120), PANELS.get(3));
        double habit = 1 / (1 + Math.exp(-2 * Math.sqrt(3)));
        double before = habit * Math.exp(-10.0 / 60);
        double after = (1 - habit) * Math.exp(-20.0 / 60);
        assertThat(places().get(1).share())
                .isCloseTo(before / (before + after + 0.1 * (1 - before - after)), within(1e-9));
    }

    @Test
    void ofTwoPhotosOfOnePanelTheOneThatSpeaksMoreIsNamedAndTheOrderOfPinsDoesNotMatter() {
        photo(START.plusSeconds(60), PANELS.get(0));
        photo(START, PANELS.get(0));
        reading(START.plusSeconds(50), PANELS.get(0));
        reading(START.plusSeconds(10), PANELS.get(0));
        List<ReadingPlaces.Place> places = places();
        assertThat(places).extracting(ReadingPlaces.Place::reading).containsExactly(0, 1);
        assertThat(places.get(1).photo()).isEqualTo(new PhotoId(2));
        assertThat(places.get(1).away()).isEqualTo(Duration.ofSeconds(10));
    }

    @Test
    void aMomentOfAFilmStandsWhereItIsInTheFilm() {
        photo(START, PANELS.get(0));
        Pin pin = pins.get(0).value();
        pins.set(
                0,
                new Recorded<>(
                        new RecordId(1),
                        new Pin(
                                pin.photo(),
                                pin.zone(),
                                OptionalDouble.of(25),
                                pin.point(),
                                pin.shows(),
                                pin.caption(),
                                pin.mark())));
        reading(START.plusSeconds(40), PANELS.get(0));
        assertThat(places().get(0).away()).isEqualTo(Duration.ofSeconds(15));
    }
}
