package quarterlight.edit.intake;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.Collectors;
import quarterlight.capture.CorrectedTime;
import quarterlight.capture.CorrectedTimes;
import quarterlight.photo.Refusal;
import quarterlight.photo.intake.FilePreview;
import quarterlight.photo.intake.FolderScan;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.WorkerLost;
import quarterlight.task.Progress;
import quarterlight.task.Threads;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/**
 * What folders hold, in the order of corrected time, before any of it is taken in: only the beginnings of files are read, so it is there within
 * seconds while copying has hardly begun. Files without a time come last, by name.
 *
 * @param refused files that cannot be read
 */
public record ImportPreview(List<FilePreview> glances, List<Refusal> refused) {
    private static final int THREADS = 2;
    /** Leaves room for a million files between two sheets that begin a millisecond apart. */
    private static final int SHEET_BITS = 20;

    public ImportPreview {
        glances = List.copyOf(glances);
        refused = List.copyOf(refused);
    }

    /**
     * @param visit whose zone and camera clocks put the photos in order
     * @param workers read what the files say of themselves
     * @throws java.util.concurrent.CancellationException if the progress is cancelled
     */
    public static ImportPreview of(
            VisitRecord visit, List<Path> folders, DecodingWorkers workers, Clock clock, Progress progress)
            throws InterruptedException {
        FolderScan scan = FolderScan.of(folders, progress);
        List<Refusal> refused = new ArrayList<>(scan.refused());
        List<FilePreview> glances = new ArrayList<>();
        FilePreview.Numbers numbers = new FilePreview.Numbers(clock.millis() << SHEET_BITS);
        ExecutorService threads = Threads.pool("contact-sheet", THREADS);
        try {
            List<Future<FilePreview>> looks = scan.media().stream()
                    .map(found -> threads.submit(() -> FilePreview.at(found, workers, clock.instant(), numbers)))
                    .toList();
            for (int i = 0; i < looks.size(); i++) {
                progress.checkCancelled();
                Path file = scan.media().get(i).file();
                progress.report(i, looks.size(), String.valueOf(file.getFileName()));
                try {
                    glances.add(looks.get(i).get());
                } catch (ExecutionException e) {
                    refused.add(new Refusal(file, reason(file, e.getCause())));
                }
            }
        } finally {
            threads.shutdownNow();
        }
        return new ImportPreview(sorted(visit, glances), refused);
    }

    private static String reason(Path file, Throwable cause) {
        if (cause instanceof WorkerLost lost) {
            return lost.reason();
        }
        if (cause instanceof IOException) {
            return say("refused.intake.gone");
        }
        throw new IllegalStateException("looking at " + file + " failed", cause);
    }

    private static List<FilePreview> sorted(VisitRecord visit, List<FilePreview> glances) {
        List<Photo> photos = new ArrayList<>();
        for (int i = 0; i < glances.size(); i++) {
            photos.add(new Photo(new PhotoId(i + 1), glances.get(i).provisional(), Optional.empty()));
        }
        CorrectedTimes times = CorrectedTimes.of(visit.holding(photos));
        Map<PhotoId, Instant> taken = photos.stream()
                .flatMap(photo -> times.of(photo.id()).stream().map(time -> Map.entry(photo.id(), instant(time))))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        Function<Photo, Instant> order = photo -> taken.getOrDefault(photo.id(), Instant.MAX);
        return photos.stream()
                .sorted(Comparator.comparing(order)
                        .thenComparing(photo -> photo.file().name()))
                .map(photo -> glances.get((int) photo.id().value() - 1))
                .toList();
    }

    private static Instant instant(CorrectedTime time) {
        return time.utc().toInstant();
    }
}
