package quarterlight.page.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import quarterlight.task.Progress;

/** The pictures of a report, made on as many threads as the computer has. Immutable. */
final class Pictures {
    private final Map<Frame, PrintedPicture> made;

    private Pictures(Map<Frame, PrintedPicture> made) {
        this.made = made;
    }

    /**
     * Makes them.
     *
     * @param print a picture ready for print; empty for what cannot be shown
     * @throws CancellationException if the job was cancelled; nothing is left running
     */
    static Pictures of(List<Frame> frames, Function<Frame, Optional<PrintedPicture>> print, Progress progress) {
        List<Frame> wanted = frames.stream().distinct().toList();
        AtomicInteger thread = new AtomicInteger();
        ExecutorService workers = Executors.newFixedThreadPool(
                Math.max(1, Runtime.getRuntime().availableProcessors()),
                work -> new Thread(work, "report picture " + thread.incrementAndGet()));
        Map<Frame, PrintedPicture> made = new LinkedHashMap<>();
        try {
            Map<Frame, Future<Optional<PrintedPicture>>> asked = new LinkedHashMap<>();
            wanted.forEach(frame -> asked.put(frame, workers.submit(() -> {
                progress.checkCancelled();
                return print.apply(frame);
            })));
            int done = 0;
            for (Map.Entry<Frame, Future<Optional<PrintedPicture>>> entry : asked.entrySet()) {
                progress.checkCancelled();
                progress.report(done++, wanted.size(), "Preparing photos for print");
                result(entry.getValue()).ifPresent(picture -> made.put(entry.getKey(), picture));
            }
        } finally {
            workers.shutdownNow();
        }
        return new Pictures(made);
    }

    private static Optional<PrintedPicture> result(Future<Optional<PrintedPicture>> asked) {
        try {
            return asked.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("broken off while photos were prepared");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            if (e.getCause() instanceof Error fault) {
                throw fault;
            }
            throw new IllegalStateException("a photo could not be prepared", e.getCause());
        }
    }

    Optional<PrintedPicture> of(Frame frame) {
        return Optional.ofNullable(made.get(frame));
    }

    /** The files by their address within the page. */
    Map<String, byte[]> byAddress() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        made.forEach((frame, picture) -> files.put(frame.address(), picture.jpeg()));
        return files;
    }
}
