package quarterlight.ui.kit;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.task.Job;
import quarterlight.task.JobRunner;
import quarterlight.task.Progress;

/** Runs jobs on worker threads and delivers what comes of them on the event thread. */
public final class SwingJobRunner implements JobRunner {
    /** Shows how far a job is; called on the event thread, at most every 50 ms for one job. */
    public interface Display {
        void started(String title, Cancel cancel);

        void report(int done, int total, String what);

        void ended();
    }

    private static final long REPORT_EVERY_NS = 50_000_000;
    private final ExecutorService workers;
    private final Display display;

    public SwingJobRunner(ExecutorService workers, Display display) {
        this.workers = workers;
        this.display = display;
    }

    @Override
    public <T> Cancel start(String title, Job<T> job, Consumer<? super T> done, Consumer<? super Exception> failed) {
        AtomicBoolean cancelled = new AtomicBoolean();
        Cancel cancel = () -> cancelled.set(true);
        SwingUtilities.invokeLater(() -> display.started(title, cancel));
        workers.execute(() -> run(job, new Reports(cancelled), done, failed));
        return cancel;
    }

    private <T> void run(Job<T> job, Progress progress, Consumer<? super T> done, Consumer<? super Exception> failed) {
        try {
            T result = job.run(progress);
            deliver(() -> done.accept(result));
        } catch (CancellationException e) {
            deliver(() -> {});
        } catch (Exception e) {
            deliver(() -> failed.accept(e));
        }
    }

    private void deliver(Runnable outcome) {
        SwingUtilities.invokeLater(() -> {
            display.ended();
            outcome.run();
        });
    }

    private final class Reports implements Progress {
        private final AtomicBoolean cancelled;
        private long last;

        Reports(AtomicBoolean cancelled) {
            this.cancelled = cancelled;
        }

        @Override
        public synchronized void report(int done, int total, String what) {
            long now = System.nanoTime();
            if (done == total || now - last >= REPORT_EVERY_NS) {
                last = now;
                SwingUtilities.invokeLater(() -> display.report(done, total, what));
            }
        }

        @Override
        public boolean cancelled() {
            return cancelled.get();
        }
    }
}
