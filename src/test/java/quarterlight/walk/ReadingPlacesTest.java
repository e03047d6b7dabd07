package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
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
                Optional.of(captured),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                Optional.empty());
        photos.add(new Photo(new PhotoId(number), file, Optional.empty()));
        Pin pin = VisitParts.pin(new PhotoId(number), zone);
        pins.add(new Recorded<>(new RecordId(number), pin));
    }

    private void reading(LocalDateTime time, ZoneId zone) {
        readings.add(time);
        truth.add(zone);
    }

    private VisitRecord visit() {
        Car car = new Car(
                "Tamarisk",
                Body.usual(BodyStyle.COUPE),
                DriveSide.LEFT,
                FinishProfile.UNKNOWN,
                OptionalInt.empty(),
                Optional.empty(),
                Substrate.STEEL,
                Map.of(),
                Dimensions.NOT_GIVEN);
        return new VisitParts(VisitParts.facts(car, ZoneOffset.UTC))
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
}
