package quarterlight.page.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.PriorityBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import quarterlight.language.Language;
import quarterlight.task.Progress;
import quarterlight.task.Threads;

/**
 * The threads that make pages, as many as the computer has, and the one count of steps that all of them report. Safe for several
 * threads.
 */
public final class PageWorkers implements AutoCloseable {
    private static final int MAX_STEP_SECONDS = 120;

    private final Progress progress;
    private final Language asked;
    private final ExecutorService threads;
    private final AtomicInteger numbers = new AtomicInteger();
    private volatile Consumer<Path> looker = file -> {};
    private int done;
    private int total;

    /** With a progress told in the language in hand. */
    public PageWorkers(Progress progress) {
        this(progress, Language.inHand());
    }

    /** @param asked the language in which progress is told, whatever the pages speak */
    public PageWorkers(Progress progress, Language asked) {
        this.progress = progress;
        this.asked = Objects.requireNonNull(asked, "asked");
        this.threads = Threads.pool(
                "pages", Math.max(2, Runtime.getRuntime().availableProcessors()), new PriorityBlockingQueue<>());
    }

    /** Announces steps, so that the whole is known before the first is done. */
    public synchronized void expect(int steps) {
        total += steps;
    }

    /** When a step has its turn; within one of these, in the order in which they were started. */
    public enum Turn {
        /** Others wait for it. */
        FIRST,
        USUAL,
        /** Nothing waits for it but the end. */
        LAST
    }

    private static final class Step<T> extends FutureTask<T> implements Comparable<Step<?>> {
        private final Turn turn;
        private final int number;

        Step(Callable<T> work, Turn turn, int number) {
            super(work);
            this.turn = turn;
            this.number = number;
        }

        @Override
        public int compareTo(Step<?> other) {
            return turn == other.turn ? Integer.compare(number, other.number) : turn.compareTo(other.turn);
        }
    }

    /** Starts one step in its usual turn. A cancelled one fails when its turn comes. */
    public <T> Future<T> start(PageStep what, Callable<T> step) {
        return start(Turn.USUAL, what, step);
    }

    /** Starts one step in a turn of its own. */
    public <T> Future<T> start(Turn turn, PageStep what, Callable<T> step) {
        Callable<T> said = Language.carried(step);
        Step<T> started = new Step<>(
                () -> {
                    progress.checkCancelled();
                    report(0, what);
                    T made = said.call();
                    report(1, what);
                    return made;
                },
                turn,
                numbers.incrementAndGet());
        threads.execute(started);
        return started;
    }

    /** @param looks at each page that is made from now on, on the thread that made it */
    public void tellOf(Consumer<Path> looks) {
        looker = Objects.requireNonNull(looks, "looks");
    }

    /** Starts a step that makes a page, a file that is whole when the step ends. */
    public Future<Path> startPage(PageStep what, Callable<Path> step) {
        return start(what, () -> {
            Path made = step.call();
            looker.accept(made);
            return made;
        });
    }

    private synchronized void report(int more, PageStep what) {
        done += more;
        try (Language.Scope spoken = asked.inHandUntilClosed()) {
            Objects.requireNonNull(spoken, "spoken");
            progress.report(done, Math.max(done, total), what.said());
        }
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
