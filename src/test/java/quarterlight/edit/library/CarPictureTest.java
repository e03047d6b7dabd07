package quarterlight.edit.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.store.library.LibraryPicture;
import quarterlight.table.ZoneTable;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.row.RecordKind;

/** By which photo a car is known among all visits. */
class CarPictureTest {
    private static final int BAY = 1;
    private static final int HOOD = 2;
    private static final int WHOLE = 3;

    @TempDir
    Path folder;

    @Test
    void theWholeCarStandsForItElseItsOutsideElseTheFirstPhoto() throws Exception {
        try (VisitStore store = VisitStore.create(
                folder.resolve("visit"),
                new FactEdits(ZoneTable.load())
                        .start(Map.of("car", "Tamarisk", "style", "coupe", "timezone", "UTC"), ZoneOffset.UTC),
                SampleVisit.CLOCK)) {
            store.change("take in", tx -> {
                for (int number = BAY; number <= WHOLE; number++) {
                    tx.addPhoto(SampleVisit.barePhoto(number));
                }
            });
            List<String> shown = new ArrayList<>();
            shown.add(picture(store));
            pin(store, BAY, "engine", Optional.empty());
            pin(store, BAY, "firewall", Optional.empty());
            pin(store, HOOD, "hood", Optional.empty());
            shown.add(picture(store));
            pin(store, WHOLE, "whole-car", Optional.of("left side"));
            shown.add(picture(store));
            assertThat(shown).containsExactly("originals/p1", "originals/p2", "originals/p3");
        }
    }

    private static void pin(VisitStore store, int photo, String zone, Optional<String> shows) throws Exception {
        new RowEdits(store)
                .add(
                        RecordKind.PINS,
                        List.of(new Pin(
                                new PhotoId(photo),
                                new ZoneId(zone),
                                OptionalDouble.empty(),
                                Optional.empty(),
                                shows,
                                Optional.empty(),
                                Optional.empty())));
    }

    private static String picture(VisitStore store) throws Exception {
        return VisitSayings.ofCar(store.read(), ZoneTable.load())
                .map(LibraryPicture::stored)
                .orElseThrow();
    }
}
