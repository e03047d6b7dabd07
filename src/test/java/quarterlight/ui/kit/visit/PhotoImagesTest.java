package quarterlight.ui.kit.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.TestPhotos;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.intake.Intake;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.photo.PhotoFile;

/** When what waits for the small pictures begins. */
class PhotoImagesTest {
    @TempDir
    Path folder;

    @Test
    void whatWaitsForPicturesBeginsWhenAllThatWereAskedForAreThere() throws Exception {
        Path card = folder.resolve("card");
        for (int i = 1; i <= 3; i++) {
            TestPhotos.write(card.resolve("IMG_" + i + ".JPG"), i, "2026:02:28 10:00:0" + i);
        }
        try (VisitStore store = VisitStore.create(
                folder.resolve("visit"),
                new FactEdits(ZoneTable.load()).start(Map.of("car", "Tamarisk", "style", "coupe"), ZoneOffset.UTC),
                Clock.systemUTC())) {
            new Intake(store, Clock.systemUTC(), (photo, jpeg) -> {}).run(List.of(card), Progress.NONE);
            List<PhotoFile> files =
                    store.read().photos().stream().map(photo -> photo.file()).toList();
            // the last one cannot be shown, which is an answer too
            Files.write(folder.resolve("visit").resolve(files.get(2).stored()), new byte[] {1});
            PhotoImages images = new PhotoImages(store.folder(), new DecodingWorkers());
            AtomicInteger begun = new AtomicInteger();
            CountDownLatch still = new CountDownLatch(1);
            SwingUtilities.invokeAndWait(() -> {
                images.onceStill(begun::incrementAndGet);
                assertThat(begun).as("nothing was asked for").hasValue(1);
                files.forEach(file -> assertThat(images.thumbnail(file)).isEmpty());
                images.onceStill(() -> {
                    assertThat(images.thumbnail(files.get(0))).isPresent();
                    assertThat(images.thumbnail(files.get(1))).isPresent();
                    assertThat(images.cannotShow(files.get(2))).isTrue();
                    begun.incrementAndGet();
                    still.countDown();
                });
                assertThat(begun).as("pictures are waited for").hasValue(1);
            });
            assertThat(still.await(30, TimeUnit.SECONDS)).isTrue();
            SwingUtilities.invokeAndWait(() -> {});
            assertThat(begun).as("it begins once").hasValue(2);
            SwingUtilities.invokeAndWait(images::close);
        }
    }
}
