package quarterlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.fact.FactEdits;
import quarterlight.store.SampleVisit;
import quarterlight.table.ZoneTable;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** A key to which pins are added one by one is the key made anew of all of them. */
class PinKeyPropertyTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void aPinAddedIsNumberedAsInAKeyMadeAnew(long seed) throws Exception {
        Random random = new Random(seed);
        ZoneCatalog catalog = ZoneTable.load();
        VisitFacts facts = new FactEdits(catalog)
                .start(Map.of("car", "Tamarisk", "style", "coupe", "timezone", "UTC"), ZoneOffset.UTC);
        BodyDiagram diagram = VisitDiagram.of(java.nio.file.Path.of("none"), facts);
        ZonePlaces places = ZonePlaces.of(diagram);
        List<ZoneId> zones = catalog.zonesOf(facts.car().body()).stream()
                .map(zone -> zone.id())
                .toList();
        List<Photo> photos = new ArrayList<>();
        for (int i = 1; i <= 30; i++) {
            photos.add(photo(random, i));
        }
        List<Recorded<Pin>> rows = new ArrayList<>();
        PinKey grown = PinKey.of(visit(facts, photos, rows), times(facts, photos), catalog, diagram, places);
        for (int i = 1; i <= 60; i++) {
            Photo photo = photos.get(random.nextInt(photos.size()));
            Recorded<Pin> row =
                    new Recorded<>(new RecordId(i), pin(photo.id(), zones.get(random.nextInt(zones.size()))));
            rows.add(row);
            grown = grown.with(row, photo, times(facts, photos), catalog, diagram, places);
            PinKey anew = PinKey.of(visit(facts, photos, rows), times(facts, photos), catalog, diagram, places);
            assertThat(grown.entries()).as("seed %d, pin %d", seed, i).isEqualTo(anew.entries());
            assertThat(grown.entries())
                    .allMatch(entry -> entry.number().equals(entry.photo().toString()));
        }
        assertThat(grown.entries()).hasSizeBetween(20, 59);
    }

    /** Times repeat, every fourth photo has none, every fifth is set aside. */
    private static Photo photo(Random random, int number) {
        PhotoFile bare = SampleVisit.barePhoto(number);
        Optional<CaptureTime> time = number % 4 == 0
                ? Optional.empty()
                : Optional.of(new CaptureTime(
                        LocalDateTime.of(2026, 3, 2, 10, random.nextInt(8)),
                        "",
                        Optional.empty(),
                        CaptureSource.ORIGINAL,
                        false));
        PhotoFile file = new PhotoFile(
                bare.name(),
                bare.stored(),
                bare.sha256(),
                bare.bytes(),
                bare.kind(),
                bare.type(),
                new MediaHeader(
                        time,
                        bare.gpsUtc(),
                        bare.position(),
                        bare.camera(),
                        bare.width(),
                        bare.height(),
                        bare.orientation(),
                        bare.seconds(),
                        bare.contentId()),
                bare.sharpness(),
                bare.notes(),
                MediaFacts.NONE);
        return new Photo(new PhotoId(number), file, number % 5 == 0 ? Optional.of("soft") : Optional.empty());
    }

    private static Pin pin(PhotoId photo, ZoneId zone) {
        return VisitParts.pin(photo, zone);
    }

    private static VisitRecord visit(VisitFacts facts, List<Photo> photos, List<Recorded<Pin>> rows) {
        return new VisitParts(facts).photos(photos).pins(rows).record();
    }

    private static CorrectedTimes times(VisitFacts facts, List<Photo> photos) {
        return CorrectedTimes.of(visit(facts, photos, List.of()));
    }
}
