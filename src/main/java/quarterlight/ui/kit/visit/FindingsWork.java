package quarterlight.ui.kit.visit;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.findings.Findings;
import quarterlight.findings.Measured;
import quarterlight.table.TableUnreadable;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.UiContext;
import quarterlight.visit.VisitRecord;

/** Works out the findings and the coverage of the last state of the visit in the background; states that were overtaken are left out. */
final class FindingsWork {
    /** What was worked out of one state. */
    private sealed interface Answer {
        /** What is known before anything was judged. */
        record Bare(Measured measured) implements Answer {}

        record Judged(Findings findings, List<ZoneCoverage> coverage) implements Answer {}

        /** Nothing changed. */
        record Same() implements Answer {}
    }

    private final Consumer<Measured> measured;
    private final BiConsumer<Findings, List<ZoneCoverage>> judged;

    private final LatestWork<VisitRecord, Answer> work;
    private final UiContext parts;
    private final Path folder;
    private final AtomicBoolean stale = new AtomicBoolean();
    private Optional<List<Object>> last = Optional.empty();
    private Optional<List<Object>> lastTold = Optional.empty();
    private Optional<Findings> made = Optional.empty();
    private List<ZoneCoverage> coverage = List.of();

    /**
     * @param measured told on the event thread, once, before the first findings
     * @param judged told on the event thread; the same findings again if only the coverage changed
     * @param failed told on the event thread what cannot be worked out
     */
    FindingsWork(
            UiContext parts,
            Path folder,
            Consumer<Measured> measured,
            BiConsumer<Findings, List<ZoneCoverage>> judged,
            Consumer<Exception> failed) {
        this.measured = measured;
        this.judged = judged;
        this.parts = parts;
        this.folder = folder;
        this.work = new LatestWork<>(
                "quarterlight-findings", SwingUtilities::invokeLater, this::answer, this::tell, failed);
    }

    void request(VisitRecord visit) {
        work.request(visit);
    }

    /** The same although no evidence changed: what it is read by did. */
    void again(VisitRecord visit) {
        stale.set(true);
        request(visit);
    }

    private void tell(Answer answer) {
        if (answer instanceof Answer.Bare bare) {
            measured.accept(bare.measured());
        } else if (answer instanceof Answer.Judged fresh) {
            judged.accept(fresh.findings(), fresh.coverage());
        }
    }

    /** Nothing new if the findings, what is told of them, and the coverage are those of the last answer. */
    private Answer answer(VisitRecord visit, LatestWork.Course<Answer> course) throws TableUnreadable {
        List<Object> evidence = evidence(visit);
        boolean fresh = stale.getAndSet(false)
                || made.isEmpty()
                || !last.map(evidence::equals).orElse(false);
        if (fresh) {
            Measured bare = parts.work().measured(folder, visit);
            if (made.isEmpty()) {
                course.soFar(new Answer.Bare(bare));
            }
            made = Optional.of(parts.work().findings(folder, bare));
            last = Optional.of(evidence);
        }
        List<Object> told = told(visit);
        boolean same = lastTold.map(told::equals).orElse(false);
        if (!fresh && !same) {
            made = made.map(findings -> findings.beside(visit));
        }
        lastTold = Optional.of(told);
        Findings findings = made.get();
        List<ZoneCoverage> covered = parts.work().coverage(folder, findings, visit);
        if (!fresh && same && covered.equals(coverage)) {
            return new Answer.Same();
        }
        coverage = covered;
        return new Answer.Judged(findings, covered);
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

    /** What is told of the findings but decides none of them; what matters is ranked by it. */
    private static List<Object> told(VisitRecord visit) {
        return List.of(visit.claims(), visit.odometer(), visit.decisions(), visit.leftOut());
    }

    void stop() {
        work.stop();
    }
}
