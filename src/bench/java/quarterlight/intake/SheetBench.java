package quarterlight.intake;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import quarterlight.edit.intake.ImportPreview;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.task.Progress;

/** {@code SheetBench VISIT FOLDER}: seconds from the start of the process until the contact sheet of the folder is complete and sorted. */
public final class SheetBench {
    private SheetBench() {}

    public static void main(String[] args) throws Exception {
        try (DecodingWorkers workers = new DecodingWorkers()) {
            workers.start();
            ImportPreview sheet;
            try (VisitStore store = VisitStore.openForReading(Path.of(args[0]))) {
                sheet = ImportPreview.of(
                        store.read(), List.of(Path.of(args[1])), workers, Clock.systemUTC(), Progress.NONE);
            }
            long started = ManagementFactory.getRuntimeMXBean().getStartTime();
            double took = (System.currentTimeMillis() - started) / 1000.0;
            long small = sheet.glances().stream()
                    .filter(glance -> glance.picture(workers).isPresent())
                    .count();
            System.out.printf(
                    "%d photos, %d with a small picture, sorted after %.2f s%n",
                    sheet.glances().size(), small, took);
        }
    }
}
