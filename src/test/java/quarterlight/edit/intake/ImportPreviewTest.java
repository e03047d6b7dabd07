package quarterlight.edit.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.TimeZone;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.car.body.BodyStyle;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.rust.TestVisits;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;

class ImportPreviewTest {
    /** Of nine photos of one camera: the order of exiftool's DateTimeOriginal, whatever the computer's own zone. */
    @ParameterizedTest
    @ValueSource(strings = {"UTC", "America/Los_Angeles", "Asia/Kathmandu", "Pacific/Auckland"})
    void photosStandInTheOrderOfTimeBeforeTheyAreTakenIn(String zone) throws InterruptedException {
        Path folder = Path.of(System.getProperty("quarterlight.basedir", "."))
                .resolve("../shared/real-photos/walk/compact")
                .normalize();
        Assumptions.assumeTrue(Files.isDirectory(folder), "the sample photos are not beside the project");
        TimeZone before = TimeZone.getDefault();
        try (DecodingWorkers workers = new DecodingWorkers()) {
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            VisitRecord visit = VisitRecord.empty(TestVisits.facts(BodyStyle.COUPE));
            List<Path> files = new ArrayList<>();
            for (int number : List.of(42, 10, 38, 12, 29, 21, 40, 27, 25)) {
                files.add(folder.resolve("DSCN00" + number + ".jpg"));
            }
            ImportPreview sheet = ImportPreview.of(visit, files, workers, Clock.systemUTC(), Progress.NONE);
            assertThat(sheet.refused()).isEmpty();
            assertThat(sheet.glances())
                    .extracting(glance -> glance.provisional().name())
                    .hasSize(9)
                    .isSorted();
            assertThat(sheet.glances())
                    .allMatch(glance -> glance.picture(workers).isPresent());
        } finally {
            TimeZone.setDefault(before);
        }
    }
}
