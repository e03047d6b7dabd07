package quarterlight.task;

import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/**
 * Answers the newest question on a thread of its own. A newer question replaces one that waits; one that is being worked on is told through
 * its progress that it has been replaced, and may stop at its next check or finish, in which case its answer still arrives, before the
 * newer one. After {@link #stop} nothing arrives.
 *
 * @param <Q> the question
 * @param <A> the answer
 */
public final class LatestWork<Q, A> {
    /** How one question is answered. */
    @FunctionalInterface
    public interface Work<Q, A> {
        A answer(Q question, Course<A> course) throws Exception;
    }

    /** What work on one question sees: cancelled when it was replaced or stopped; it can hand over what it has so far. */
    public interface Course<A> extends Progress {
        void soFar(A answer);
    }

    /** One question on its way. */
    private record Asked<Q>(long number, Q question) {}

    private static final System.Logger LOG = System.getLogger(LatestWork.class.getName());

    private final Work<Q, A> work;
    private final Executor delivery;
    private final Consumer<? super A> arrived;
    private final Consumer<? super Exception> failed;
    private final AtomicLong newest = new AtomicLong();
    private final AtomicReference<Optional<Asked<Q>>> waiting = new AtomicReference<>(Optional.empty());
    private final ExecutorService thread;
    private volatile Progress watcher = Progress.NONE;
    private volatile long unwanted;
    private volatile boolean stopped;

    /**
     * @param name of the thread
     * @param delivery runs what is told, such as on the event thread of a window
     * @param work run on the thread, one question at a time
     * @param arrived told each answer
     * @param failed told what prevented an answer
     */
    public LatestWork(
            String name,
            Executor delivery,
            Work<Q, A> work,
            Consumer<? super A> arrived,
            Consumer<? super Exception> failed) {
        this.delivery = Objects.requireNonNull(delivery, "delivery");
        this.work = Objects.requireNonNull(work, "work");
        this.arrived = Objects.requireNonNull(arrived, "arrived");
        this.failed = Objects.requireNonNull(failed, "failed");
        this.thread = Threads.inOrderDaemon(name);
    }

    /** Works out one thing; its thread ends with it. */
    public static <A> void once(
            String name,
            Executor delivery,
            Job<A> job,
            Consumer<? super A> arrived,
            Consumer<? super Exception> failed) {
        LatestWork<String, A> only =
                new LatestWork<>(name, delivery, (question, course) -> job.run(course), arrived, failed);
        only.request(name);
        only.thread.shutdown();
    }

    /** Reports of progress go to this from now on, on the thread of the work. */
    public LatestWork<Q, A> reportingTo(Progress told) {
        watcher = Objects.requireNonNull(told, "told");
        return this;
    }

    /** Asks; what waits is replaced, what is being worked on is told so. */
    public void request(Q question) {
        Asked<Q> asked = new Asked<>(newest.incrementAndGet(), question);
        if (waiting.getAndSet(Optional.of(asked)).isEmpty()) {
            try {
                thread.execute(this::answer);
            } catch (RejectedExecutionException e) {
                LOG.log(System.Logger.Level.DEBUG, "asked after the end of the work", e);
            }
        }
    }

    /** Wants no answer to what was asked so far; a later question is answered as ever. */
    public void cancel() {
        unwanted = newest.get();
    }

    private void answer() {
        Asked<Q> asked = waiting.getAndSet(Optional.empty()).orElseThrow();
        if (!isWanted(asked.number())) {
            return;
        }
        One one = new One(asked.number());
        try {
            one.soFar(work.answer(asked.question(), one));
        } catch (CancellationException e) {
            LOG.log(System.Logger.Level.TRACE, "replaced by a newer question", e);
        } catch (Exception e) {
            deliver(asked.number(), () -> failed.accept(e));
        }
    }

    private boolean isWanted(long number) {
        return !stopped && number > unwanted;
    }

    private void deliver(long number, Runnable told) {
        delivery.execute(() -> {
            if (isWanted(number)) {
                told.run();
            }
        });
    }

    /** Ends the work for good: nothing is told any more. */
    public void stop() {
        stopped = true;
        thread.shutdownNow();
    }

    private final class One implements Course<A> {
        private final long number;

        One(long number) {
            this.number = number;
        }

        @Override
        public void soFar(A answer) {
            deliver(number, () -> arrived.accept(answer));
        }

        @Override
        public void report(int done, int total, String what) {
            watcher.report(done, total, what);
        }

        @Override
        public boolean cancelled() {
            return number != newest.get() || !isWanted(number);
        }
    }
}
