package quarterlight.edit.matter;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import quarterlight.edit.EditRefused;
import quarterlight.edit.row.RowEdits;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.MatterDecision;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.row.UndoNames;
import quarterlight.visit.statement.Severity;

/** Sets the inspector's own severity of something that matters, with the reason, or takes it back; each call is one undo step. */
public final class MatterEdits {
    private static final int NAMED = 8;

    private final VisitStore store;

    public MatterEdits(VisitStore store) {
        this.store = Objects.requireNonNull(store, "store");
    }

    /**
     * Sets a severity; an earlier one of the same matter is replaced.
     *
     * @param matters as the visit stands
     * @throws EditRefused if there is no such matter, or no reason is given
     */
    public void set(Matters matters, String id, Severity severity, String reason) throws EditRefused, VisitProblem {
        Matter matter = matters.find(id).orElseThrow(() -> unknown(matters, id));
        if (reason.isBlank()) {
            throw new EditRefused("reason", say("refused.severity.reason"));
        }
        MatterDecision decision = new MatterDecision(id, severity, reason.strip(), matter.ruled());
        List<Recorded<MatterDecision>> earlier = earlier(id);
        String label = say("undo.severity", UndoNames.quoted(matter.sentence()), severity.said());
        if (earlier.isEmpty()) {
            new RowEdits(store).add(RecordKind.DECISIONS, List.of(decision), label);
        } else {
            RecordId last = earlier.get(earlier.size() - 1).id();
            new RowEdits(store).update(RecordKind.DECISIONS, last, decision, label);
        }
    }

    /**
     * Takes the inspector's severity back, so that the rule's holds.
     *
     * @param matters as the visit stands, by which undo calls it; it may no longer be among them
     * @throws EditRefused if none was set
     */
    public void takeBack(Matters matters, String id) throws EditRefused, VisitProblem {
        List<RecordId> rows = earlier(id).stream().map(Recorded::id).toList();
        if (rows.isEmpty()) {
            throw new EditRefused("matter", "No severity of your own is set for " + id + ".");
        }
        String what = matters.find(id)
                .map(matter -> UndoNames.quoted(matter.sentence()))
                .orElseGet(() -> say("undo.severity.gone"));
        new RowEdits(store).remove(RecordKind.DECISIONS, rows, say("undo.severity.back", what));
    }

    private List<Recorded<MatterDecision>> earlier(String id) throws VisitProblem {
        return store.read().decisions().stream()
                .filter(row -> row.value().matter().equals(id))
                .toList();
    }

    private static EditRefused unknown(Matters matters, String id) {
        String known = matters.all().stream().limit(NAMED).map(Matter::id).collect(Collectors.joining(", "));
        return new EditRefused(
                "matter",
                "Nothing that matters is called " + id + ". " + (known.isEmpty() ? "" : "There are: " + known + ". ")
                        + "The verb findings lists all.");
    }
}
