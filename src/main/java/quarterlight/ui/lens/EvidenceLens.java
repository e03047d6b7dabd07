package quarterlight.ui.lens;

import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import quarterlight.findings.Findings;
import quarterlight.matters.Matters;
import quarterlight.table.TableUnreadable;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.units.ThicknessUnit;

/** Answers what something rests on, in a window of its own; what matters is worked out when it is first asked. Event thread only. */
public final class EvidenceLens {
    private static final System.Logger LOG = System.getLogger(EvidenceLens.class.getName());

    /** What stands under the pointer is read, so it stays longer than a word. */
    private static final int DISMISS_MS = 30_000;

    private final UiContext parts;
    private final OpenVisit visit;
    private final Supplier<Window> owner;
    private final Consumer<ChangedRows> go;
    private Optional<Known> known = Optional.empty();
    private Optional<Subject> waiting = Optional.empty();
    private final LatestWork<Findings, Known> quiet;
    private Optional<Findings> wanted = Optional.empty();
    private Optional<Said> said = Optional.empty();

    /** What was worked out, of which findings. */
    private record Known(Findings findings, Matters matters) {}

    /** What was said last while the pointer rested on something. */
    private record Said(Subject subject, ThicknessUnit unit, Known known, Optional<String> words) {}

    /** @param go goes where rows, zones and photos stand in the window */
    public EvidenceLens(UiContext parts, OpenVisit visit, Supplier<Window> owner, Consumer<ChangedRows> go) {
        this.parts = parts;
        this.visit = visit;
        this.owner = owner;
        this.go = go;
        this.quiet = new LatestWork<>(
                "quarterlight-lens",
                SwingUtilities::invokeLater,
                (findings, course) -> known(findings),
                fresh -> known = Optional.of(fresh),
                failure -> LOG.log(System.Logger.Level.WARNING, "what matters could not be worked out", failure));
        ToolTipManager.sharedInstance().setDismissDelay(DISMISS_MS);
        visit.onGlance(this::glance);
        visit.onAsked(this::ask);
        visit.onFindings(() -> {
            Optional<Subject> asked = waiting;
            waiting = Optional.empty();
            asked.ifPresent(this::ask);
        });
    }

    /** Shows what something rests on, as soon as the visit is worked out. */
    private void ask(Subject subject) {
        Optional<Findings> findings = visit.findings();
        if (findings.isEmpty()) {
            waiting = Optional.of(subject);
        } else if (isKnown(findings.get())) {
            show(subject, known.orElseThrow());
        } else {
            parts.jobs()
                    .start(
                            parts.texts().get("lens.job"),
                            progress -> known(findings.get()),
                            fresh -> {
                                known = Optional.of(fresh);
                                show(subject, fresh);
                            },
                            parts.problems()::failed);
        }
    }

    private boolean isKnown(Findings findings) {
        return known.filter(one -> one.findings().equals(findings)).isPresent();
    }

    /** Not on the event thread. */
    private Known known(Findings findings) throws TableUnreadable {
        return new Known(findings, parts.work().matters(visit.folder(), findings));
    }

    /** In short; the first time after a change it is only looked up, in the background. */
    private Optional<String> glance(Subject subject) {
        Optional<Findings> findings = visit.findings();
        if (findings.isEmpty() || !isKnown(findings.get())) {
            if (!findings.equals(wanted)) {
                wanted = findings;
                findings.ifPresent(quiet::request);
            }
            return Optional.empty();
        }
        Known one = known.orElseThrow();
        ThicknessUnit unit = parts.settings().settings().unit();
        Optional<Said> same = said.filter(last -> last.subject().equals(subject) && last.unit() == unit)
                .filter(last -> last.known().findings().equals(one.findings()));
        if (same.isEmpty()) {
            Grounds grounds = grounds(one);
            List<Ground> found = grounds.found(subject);
            Optional<String> words = found.stream().anyMatch(EvidenceLens::isOfRows)
                    ? Optional.of(Glance.of(parts.texts(), grounds.title(subject), found))
                    : Optional.empty();
            said = Optional.of(new Said(subject, unit, one, words));
        }
        return said.flatMap(Said::words);
    }

    /** A matter of many zones, such as what nobody looked at, says nothing of a single one. */
    private static boolean isOfRows(Ground ground) {
        return !ground.where().rows().isEmpty() || !ground.where().photos().isEmpty();
    }

    /** Ends the work in the background; nothing is asked after that. */
    public void stop() {
        quiet.stop();
    }

    private Grounds grounds(Known one) {
        return new Grounds(
                parts.texts(),
                parts.settings().settings().unit(),
                one.findings().beside(visit.visit()),
                one.matters(),
                visit::label);
    }

    private void show(Subject subject, Known one) {
        Grounds grounds = grounds(one);
        new LensWindow(parts.texts(), visit, owner.get(), go).show(grounds.title(subject), grounds.of(subject));
    }
}
