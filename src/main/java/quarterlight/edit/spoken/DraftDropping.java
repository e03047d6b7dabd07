package quarterlight.edit.spoken;

import static quarterlight.language.Sentences.say;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.edit.EditRefused;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.DroppedDraft;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;
import quarterlight.words.Draft;

/** Drops drafts of a spoken walk, so that they are not offered again; all of them as one undo step. */
public final class DraftDropping {
    private static final double SAME_SECOND = 0.011;

    private final VisitStore store;

    public DraftDropping(VisitStore store) {
        this.store = Objects.requireNonNull(store, "store");
    }

    /** The ids of drafts that were dropped, or kept otherwise than they were read. */
    public static Set<String> dropped(VisitRecord visit, VisitWalk walk) {
        Set<String> ids = new HashSet<>();
        if (visit.dropped().isEmpty()) {
            return ids;
        }
        for (Draft draft : walk.drafts()) {
            DroppedDraft as = row(draft, walk, Optional.empty());
            if (visit.dropped().stream().map(Recorded::value).anyMatch(row -> same(row, as))) {
                ids.add(draft.id());
            }
        }
        return ids;
    }

    private static boolean same(DroppedDraft row, DroppedDraft draft) {
        return row.words().equals(draft.words())
                && Math.abs(row.atSeconds() - draft.atSeconds()) < SAME_SECOND
                && row.what().equals(draft.what())
                && row.said().equals(draft.said());
    }

    /**
     * Drops drafts by their ids.
     *
     * @return how many were dropped that were not before
     * @throws EditRefused if an id is unknown; nothing was changed
     */
    public int drop(VisitWalk walk, Collection<String> ids) throws EditRefused, VisitProblem {
        Set<String> before = dropped(store.read(), walk);
        List<Draft> drafts = walk.drafts().stream()
                .filter(draft -> ids.contains(draft.id()) && !before.contains(draft.id()))
                .toList();
        for (String id : ids) {
            if (walk.drafts().stream().noneMatch(draft -> draft.id().equals(id))) {
                throw new EditRefused(
                        id, "There is no draft " + id + " in the words of this visit; listen lists them.");
            }
        }
        if (!drafts.isEmpty()) {
            String first = say("undo.said.drop", SpokenQuote.clock(drafts.get(0).atSeconds()));
            String label = drafts.size() == 1 ? first : say("undo.more", first, drafts.size() - 1);
            store.change(
                    label,
                    tx -> drafts.forEach(draft -> tx.add(RecordKind.DROPPED, row(draft, walk, Optional.empty()))));
        }
        return drafts.size();
    }

    /** The row of a draft that is not kept as it was read. */
    static DroppedDraft row(Draft draft, VisitWalk walk, Optional<Draft> instead) {
        return new DroppedDraft(
                walk.parts().get(draft.source()).words().id(),
                draft.atSeconds(),
                draft.what().word(),
                DraftLine.of(draft),
                draft.words().strip(),
                instead.map(DraftLine::of));
    }
}
