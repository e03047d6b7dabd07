package quarterlight.page.print;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import quarterlight.task.Progress;
import quarterlight.task.Threads;

/**
 * The threads that make pages, as many as the computer has, and the one count of steps that all of them report. Safe for several
 * threads.
 */
public final class PageWorkers implements AutoCloseable {
    private static final int MAX_STEP_SECONDS = 120;

    private final Progress progress;
    private final ExecutorService threads;
    private int done;
    private int total;

    public PageWorkers(Progress progress) {
        this.progress = progress;
        this.threads = Threads.pool("pages", Math.max(2, Runtime.getRuntime().availableProcessors()));
    }

    /** Announces steps, so that the whole is known before the first is done. */
    public synchronized void expect(int steps) {
        total += steps;
    }

    /**
     * Starts one step; steps begin in the order in which they were started. A cancelled one fails when its turn comes.
     *
     * @param what is being done, for those who wait
     */
    public <T> Future<T> start(String what, Callable<T> step) {
        return threads.submit(() -> {
            progress.checkCancelled();
            report(0, what);
            T made = step.call();
            report(1, what);
            return made;
        });
    }

    private synchronized void report(int more, String what) {
        done += more;
        progress.report(done, Math.max(done, total), what);
    }

    /**
     * Waits for a step.
     *
     * @throws CancellationException if the job was cancelled
     */
    public static <T> T result(Future<T> step) throws IOException {
        try {
            return step.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("broken off while pages were made");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException failed) {
                throw failed;
            }
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            if (e.getCause() instanceof Error fault) {
                throw fault;
            }
            throw new IllegalStateException("a page could not be made", e.getCause());
        }
    }

    /** Breaks off what is not done and waits, so that nothing is written afterwards. */
    @Override
    public void close() {
        threads.shutdownNow();
        boolean interrupted = false;
        boolean ended = false;
        while (!ended) {
            try {
                if (!threads.awaitTermination(MAX_STEP_SECONDS, TimeUnit.SECONDS)) {
                    throw new IllegalStateException("a page is still being made");
                }
                ended = true;
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
