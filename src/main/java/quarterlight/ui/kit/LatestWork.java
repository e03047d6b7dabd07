package quarterlight.ui.kit;

import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/**
 * Answers the last question in the background; questions that were overtaken while another was worked on are left out.
 *
 * @param <Q> the question
 * @param <A> the answer
 */
public final class LatestWork<Q, A> {
    private static final System.Logger LOG = System.getLogger(LatestWork.class.getName());

    private final Function<Q, A> work;
    private final Consumer<? super A> arrived;
    private final Consumer<? super RuntimeException> failed;
    private final AtomicReference<Optional<Q>> wanted = new AtomicReference<>(Optional.empty());
    private final ExecutorService worker;

    /**
     * @param thread name of the thread
     * @param work run on that thread, one question at a time
     * @param arrived told on the event thread
     * @param failed told on the event thread
     */
    public LatestWork(
            String thread,
            Function<Q, A> work,
            Consumer<? super A> arrived,
            Consumer<? super RuntimeException> failed) {
        this.work = Objects.requireNonNull(work, "work");
        this.arrived = Objects.requireNonNull(arrived, "arrived");
        this.failed = Objects.requireNonNull(failed, "failed");
        this.worker = Executors.newSingleThreadExecutor(task -> {
            Thread made = new Thread(task, thread);
            made.setDaemon(true);
            return made;
        });
    }

    /** Works out one thing in the background; its thread ends with it. */
    public static <A> void once(
            String thread, Supplier<A> work, Consumer<? super A> arrived, Consumer<? super RuntimeException> failed) {
        LatestWork<String, A> only = new LatestWork<>(thread, question -> work.get(), arrived, failed);
        only.request(thread);
        only.worker.shutdown();
    }

    public void request(Q question) {
        if (wanted.getAndSet(Optional.of(question)).isEmpty()) {
            try {
                worker.execute(this::answer);
            } catch (RejectedExecutionException e) {
                LOG.log(System.Logger.Level.DEBUG, "the visit is closing", e);
            }
        }
    }

    private void answer() {
        Q question = wanted.getAndSet(Optional.empty()).orElseThrow();
        try {
            A answer = work.apply(question);
            SwingUtilities.invokeLater(() -> arrived.accept(answer));
        } catch (RuntimeException e) {
            SwingUtilities.invokeLater(() -> failed.accept(e));
        }
    }

    public void stop() {
        worker.shutdownNow();
    }
}
