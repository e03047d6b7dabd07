package quarterlight.ui.lens;

import java.awt.Window;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import quarterlight.findings.Findings;
import quarterlight.matters.Matters;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;

/** Answers what something rests on, in a window of its own; what matters is worked out when it is first asked. Event thread only. */
public final class EvidenceLens {
    private final UiContext parts;
    private final OpenVisit visit;
    private final Supplier<Window> owner;
    private final Consumer<ChangedRows> go;
    private Optional<Known> known = Optional.empty();
    private Optional<Subject> waiting = Optional.empty();

    /** What was worked out, of which findings. */
    private record Known(Findings findings, Matters matters) {}

    /** @param go goes where rows, zones and photos stand in the window */
    public EvidenceLens(UiContext parts, OpenVisit visit, Supplier<Window> owner, Consumer<ChangedRows> go) {
        this.parts = parts;
        this.visit = visit;
        this.owner = owner;
        this.go = go;
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
        } else if (known.filter(one -> one.findings().equals(findings.get())).isPresent()) {
            show(subject, known.get());
        } else {
            parts.jobs()
                    .start(
                            parts.texts().get("lens.job"),
                            progress -> parts.work().matters(visit.folder(), findings.get()),
                            matters -> {
                                known = Optional.of(new Known(findings.get(), matters));
                                show(subject, known.get());
                            },
                            parts.problems()::failed);
        }
    }

    private void show(Subject subject, Known one) {
        Grounds grounds = new Grounds(
                parts.texts(),
                parts.settings().settings().unit(),
                one.findings().beside(visit.visit()),
                one.matters(),
                visit::label);
        new LensWindow(parts.texts(), visit, owner.get(), go).show(grounds.title(subject), grounds.of(subject));
    }
}
