package quarterlight.ui.kit;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.findings.Findings;
import quarterlight.table.TableUnreadable;
import quarterlight.visit.VisitRecord;

/** Works out the findings of the last state of the visit in the background; states that were overtaken are left out. */
final class FindingsWork {
    private static final System.Logger LOG = System.getLogger(FindingsWork.class.getName());

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "quarterlight-findings");
        thread.setDaemon(true);
        return thread;
    });
    private final DeskParts parts;
    private final Path folder;
    private final Consumer<Findings> arrived;
    private final AtomicReference<Optional<VisitRecord>> wanted = new AtomicReference<>(Optional.empty());
    private Optional<List<Object>> last = Optional.empty();

    /** @param arrived told on the event thread */
    FindingsWork(DeskParts parts, Path folder, Consumer<Findings> arrived) {
        this.parts = parts;
        this.folder = folder;
        this.arrived = arrived;
    }

    void request(VisitRecord visit) {
        if (wanted.getAndSet(Optional.of(visit)).isEmpty()) {
            try {
                worker.execute(this::work);
            } catch (RejectedExecutionException e) {
                LOG.log(System.Logger.Level.DEBUG, "the visit is closing", e);
            }
        }
    }

    private void work() {
        VisitRecord visit = wanted.getAndSet(Optional.empty()).orElseThrow();
        List<Object> evidence = evidence(visit);
        if (last.map(evidence::equals).orElse(false)) {
            return;
        }
        try {
            Findings findings = parts.work().findings(folder, visit);
            last = Optional.of(evidence);
            SwingUtilities.invokeLater(() -> arrived.accept(findings));
        } catch (TableUnreadable | RuntimeException e) {
            SwingUtilities.invokeLater(() -> parts.problems().failed(e));
        }
    }

    /** What the findings rest on; a pin or a caption changes none of them. */
    private static List<Object> evidence(VisitRecord visit) {
        return List.of(
                visit.facts(),
                visit.readings(),
                visit.gaugeChecks(),
                visit.signs(),
                visit.traces(),
                visit.marks(),
                visit.trials(),
                visit.statements(),
                visit.features(),
                visit.clocks(),
                visit.photos().size());
    }

    void stop() {
        worker.shutdownNow();
    }
}
