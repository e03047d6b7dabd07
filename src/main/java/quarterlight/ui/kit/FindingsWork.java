package quarterlight.ui.kit;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import javax.swing.SwingUtilities;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.findings.Findings;
import quarterlight.table.TableUnreadable;
import quarterlight.visit.VisitRecord;

/** Works out the findings and the coverage of the last state of the visit in the background; states that were overtaken are left out. */
final class FindingsWork {
    private static final System.Logger LOG = System.getLogger(FindingsWork.class.getName());

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "quarterlight-findings");
        thread.setDaemon(true);
        return thread;
    });
    private final DeskParts parts;
    private final Path folder;
    private final BiConsumer<Findings, List<ZoneCoverage>> arrived;
    private final AtomicReference<Optional<VisitRecord>> wanted = new AtomicReference<>(Optional.empty());
    private final AtomicBoolean stale = new AtomicBoolean();
    private Optional<List<Object>> last = Optional.empty();
    private Optional<Findings> made = Optional.empty();
    private List<ZoneCoverage> coverage = List.of();

    /** @param arrived told on the event thread; the same findings again if only the coverage changed */
    FindingsWork(DeskParts parts, Path folder, BiConsumer<Findings, List<ZoneCoverage>> arrived) {
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

    /** The same although no evidence changed: what it is read by did. */
    void again(VisitRecord visit) {
        stale.set(true);
        request(visit);
    }

    private void work() {
        VisitRecord visit = wanted.getAndSet(Optional.empty()).orElseThrow();
        List<Object> evidence = evidence(visit);
        try {
            boolean fresh = stale.getAndSet(false)
                    || made.isEmpty()
                    || !last.map(evidence::equals).orElse(false);
            if (fresh) {
                made = Optional.of(parts.work().findings(folder, visit));
                last = Optional.of(evidence);
            }
            Findings findings = made.get();
            List<ZoneCoverage> covered = parts.work().coverage(folder, findings, visit);
            if (fresh || !covered.equals(coverage)) {
                coverage = covered;
                SwingUtilities.invokeLater(() -> arrived.accept(findings, covered));
            }
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
