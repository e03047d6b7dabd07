package quarterlight.ui.kit.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.TestPhotos;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.intake.ImportPreview;
import quarterlight.edit.intake.Intake;
import quarterlight.photo.intake.FilePreview;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Photo;

/** Which photos of a folder are still on their way, beside what the visit holds. */
class PendingImportTest {
    @TempDir
    Path folder;

    @Test
    void aPhotoComesUntilTheVisitHoldsItAndIsNeverShownTwice() throws Exception {
        Path first = folder.resolve("card/a");
        Path second = folder.resolve("card/b");
        TestPhotos.write(first.resolve("IMG_1.JPG"), 1, "2026:02:28 10:00:00");
        TestPhotos.write(first.resolve("IMG_2.JPG"), 2, "2026:02:28 10:00:30");
        TestPhotos.write(second.resolve("IMG_1.JPG"), 3, "2026:02:28 10:00:00");
        try (DecodingWorkers workers = new DecodingWorkers();
                VisitStore store = VisitStore.create(
                        folder.resolve("visit"),
                        new FactEdits(ZoneTable.load())
                                .start(Map.of("car", "Tamarisk", "style", "coupe"), ZoneOffset.UTC),
                        Clock.systemUTC())) {
            List<FilePreview> glances = ImportPreview.of(
                            store.read(), List.of(folder.resolve("card")), workers, Clock.systemUTC(), Progress.NONE)
                    .glances();
            assertThat(names(glances, store)).containsExactlyInAnyOrder("IMG_1.JPG", "IMG_1.JPG", "IMG_2.JPG");
            assertThat(PendingImport.photos(glances, List.of())).allMatch(photo -> PendingImport.isComing(photo.id()));
            Intake intake = new Intake(store, Clock.systemUTC(), (photo, jpeg) -> {});
            intake.run(List.of(second), Progress.NONE);
            assertThat(names(glances, store))
                    .as("of two photos of one name and time one is in")
                    .containsExactlyInAnyOrder("IMG_1.JPG", "IMG_2.JPG");
            intake.run(List.of(first), Progress.NONE);
            assertThat(names(glances, store)).isEmpty();
            assertThat(Files.exists(second.resolve("IMG_1.JPG"))).isTrue();
        }
    }

    private static List<String> names(List<FilePreview> glances, VisitStore store) throws Exception {
        return PendingImport.photos(glances, store.read().photos()).stream()
                .map((Photo photo) -> photo.file().name())
                .toList();
    }
}
