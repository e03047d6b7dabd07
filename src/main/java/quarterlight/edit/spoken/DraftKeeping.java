package quarterlight.edit.spoken;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import quarterlight.edit.EditRefused;
import quarterlight.store.VisitStore;
import quarterlight.store.VisitTx;
import quarterlight.store.problem.SchemaRefused;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.DroppedDraft;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.RecordKind;
import quarterlight.words.Draft;

/** Keeps drafts of a spoken walk: each becomes rows, all of them as one undo step. */
public final class DraftKeeping {
    private final VisitStore store;

    public DraftKeeping(VisitStore store) {
        this.store = Objects.requireNonNull(store, "store");
    }

    /**
     * What became of the drafts.
     *
     * @param kept the drafts that are rows now, and were not before
     * @param rows how many rows there are more
     * @param before ids of drafts that were kept earlier and are left as they are
     */
    public record Outcome(List<Draft> kept, int rows, List<String> before) {
        public Outcome {
            kept = List.copyOf(kept);
            before = List.copyOf(before);
        }
    }

    /** The ids of drafts that are rows of the visit already. */
    public static Set<String> kept(VisitRecord visit, VisitWalk walk) {
        return KeptDrafts.of(visit, walk);
    }

    /**
     * A draft as it was read and as it is kept; the same, or with other zones or values.
     *
     * @param read one of the drafts of the walk
     */
    public record Choice(Draft read, Draft kept) {
        boolean isChanged() {
            return !DraftLine.of(read).equals(DraftLine.of(kept));
        }
    }

    /**
     * Keeps drafts as they were read.
     *
     * @param context what rows are read against
     * @throws EditRefused if an id is unknown or withdrawn, or its draft lacks what a row needs; nothing was changed
     */
    public Outcome keep(VisitWalk walk, List<String> ids, RowContext context) throws EditRefused, VisitProblem {
        Map<String, Draft> byId = walk.drafts().stream().collect(Collectors.toMap(Draft::id, Function.identity()));
        List<Choice> choices = new ArrayList<>();
        for (String id : new LinkedHashSet<>(ids)) {
            Draft draft = byId.get(id);
            if (draft == null) {
                throw refused(id, "There is no draft " + id + " in the words of this visit; listen lists them.");
            }
            choices.add(new Choice(draft, draft));
        }
        return keep(walk, choices, context);
    }

    /**
     * Keeps drafts, some of them changed by the inspector; how those were read is not offered again.
     *
     * @throws EditRefused if one is withdrawn or lacks what a row needs; nothing was changed
     */
    public Outcome keep(VisitWalk walk, Collection<Choice> choices, RowContext context)
            throws EditRefused, VisitProblem {
        Set<String> keptBefore = kept(store.read(), walk);
        DraftRows making = new DraftRows(context);
        List<Draft> kept = new ArrayList<>();
        List<String> before = new ArrayList<>();
        List<DraftRows.Row<?>> rows = new ArrayList<>();
        List<DroppedDraft> otherwise = new ArrayList<>();
        for (Choice choice : choices) {
            Draft draft = choice.kept();
            if (choice.read().withdrawn()) {
                throw refused(draft.id(), say("refused.draft.withdrawn", named(draft)));
            }
            if (keptBefore.contains(draft.id())) {
                before.add(draft.id());
                continue;
            }
            try {
                rows.addAll(making.of(draft, walk.parts().get(draft.source())));
                kept.add(draft);
                if (choice.isChanged()) {
                    otherwise.add(DraftDropping.row(choice.read(), walk, Optional.of(draft)));
                }
            } catch (CellRefused e) {
                throw refused(draft.id(), say("refused.draft", named(draft), why(e)));
            }
        }
        if (!rows.isEmpty()) {
            add(kept, rows, otherwise);
        }
        return new Outcome(kept, rows.size(), before);
    }

    /** What a draft lacks to be kept, in words; empty if nothing. */
    public static Optional<String> lacks(Draft draft, VisitWalk walk, RowContext context) {
        try {
            new DraftRows(context).of(draft, walk.parts().get(draft.source()));
            return Optional.empty();
        } catch (CellRefused e) {
            return Optional.of(e.reason());
        }
    }

    private static String why(CellRefused refused) {
        return refused.column().map(column -> " (" + column + ")").orElse("") + ": " + refused.reason();
    }

    private void add(List<Draft> kept, List<DraftRows.Row<?>> rows, List<DroppedDraft> otherwise)
            throws EditRefused, VisitProblem {
        String first = say("undo.said.keep", SpokenQuote.clock(kept.get(0).atSeconds()));
        String label = kept.size() == 1 ? first : say("undo.more", first, kept.size() - 1);
        try {
            store.change(label, tx -> {
                rows.forEach(row -> add(tx, row));
                tx.addAll(RecordKind.DROPPED, otherwise);
            });
        } catch (SchemaRefused e) {
            throw refused("drafts", say("refused.draft.rule", e.rule()));
        }
    }

    private static <T> void add(VisitTx tx, DraftRows.Row<T> row) {
        tx.add(row.kind(), row.value());
    }

    private static String named(Draft draft) {
        return "Draft " + draft.id() + " (" + draft.what().word() + ", " + SpokenQuote.clock(draft.atSeconds()) + ")";
    }

    private static EditRefused refused(String id, String why) {
        return new EditRefused(id, why);
    }
}
