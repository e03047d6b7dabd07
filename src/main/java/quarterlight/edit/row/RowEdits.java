package quarterlight.edit.row;

import static quarterlight.language.Sentences.say;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.edit.EditRefused;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.SchemaRefused;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** Adds, changes and removes what was recorded: readings, gauge checks, pins and all other kinds alike. */
public final class RowEdits {
    private final VisitStore store;

    public RowEdits(VisitStore store) {
        this.store = Objects.requireNonNull(store, "store");
    }

    /**
     * What was added.
     *
     * @param ids numbers of the new rows in the order given
     * @param equalToOlder how many of them equal a row that stood in the visit before
     */
    public record Added(List<RecordId> ids, int equalToOlder) {
        public Added {
            ids = List.copyOf(ids);
        }
    }

    /**
     * Adds rows as one edit; rows equal to older ones are added again, and counted. No rows make no edit.
     *
     * @throws EditRefused if the visit does not take a row; nothing was added
     */
    public <T> Added add(RecordKind<T> kind, List<T> rows) throws EditRefused, VisitProblem {
        VisitRecord before = store.read();
        Set<T> older = new HashSet<>();
        kind.of(before).forEach(row -> older.add(row.value()));
        int equal = (int) rows.stream().filter(older::contains).count();
        return new Added(add(kind, rows, rows.isEmpty() ? "" : new RowLabels(before).added(kind, rows)), equal);
    }

    /**
     * Adds rows as one edit under a label of its own, for rows that only their maker can put in words.
     *
     * @throws EditRefused if the visit does not take a row; nothing was added
     */
    public <T> List<RecordId> add(RecordKind<T> kind, List<T> rows, String label) throws EditRefused, VisitProblem {
        try {
            return store.edit(label, tx -> tx.addAll(kind, rows));
        } catch (SchemaRefused e) {
            throw refused(kind, e);
        }
    }

    /** The remark that equal rows exist, if any do. */
    public static <T> Optional<String> remark(RecordKind<T> kind, Added added) {
        int equal = added.equalToOlder();
        return equal == 0 ? Optional.empty() : Optional.of(say("refused.equal", kind.count(equal), equal));
    }

    /**
     * Replaces a row.
     *
     * @throws EditRefused if the visit does not take the value; nothing was changed
     */
    public <T> void update(RecordKind<T> kind, RecordId id, T value) throws EditRefused, VisitProblem {
        update(kind, id, value, new RowLabels(store.read()).changed(kind, List.of(value)));
    }

    /**
     * Replaces a row under a label of its own.
     *
     * @throws EditRefused if the visit does not take the value; nothing was changed
     */
    public <T> void update(RecordKind<T> kind, RecordId id, T value, String label) throws EditRefused, VisitProblem {
        try {
            store.change(label, tx -> tx.update(kind, id, value));
        } catch (SchemaRefused e) {
            throw refused(kind, e);
        }
    }

    /**
     * Replaces several rows of a kind as one edit; no rows make no edit.
     *
     * @throws EditRefused if the visit does not take a value; nothing was changed
     */
    public <T> void updateAll(RecordKind<T> kind, List<Recorded<T>> rows) throws EditRefused, VisitProblem {
        if (!rows.isEmpty()) {
            String label = new RowLabels(store.read())
                    .changed(kind, rows.stream().map(Recorded::value).toList());
            try {
                store.change(label, tx -> rows.forEach(row -> tx.update(kind, row.id(), row.value())));
            } catch (SchemaRefused e) {
                throw refused(kind, e);
            }
        }
    }

    private static EditRefused refused(RecordKind<?> kind, SchemaRefused e) {
        return new EditRefused(kind.word(), say("refused.rule.row", kind.one(), e.rule()));
    }

    /** Removes rows as one edit. */
    public <T> void remove(RecordKind<T> kind, List<RecordId> ids) throws VisitProblem {
        VisitRecord before = store.read();
        Set<RecordId> wanted = Set.copyOf(ids);
        List<T> gone = kind.of(before).stream()
                .filter(row -> wanted.contains(row.id()))
                .map(Recorded::value)
                .toList();
        remove(kind, ids, gone.isEmpty() ? say("undo.remove", kind.one()) : new RowLabels(before).removed(kind, gone));
    }

    /** Removes rows as one edit under a label of its own. */
    public <T> void remove(RecordKind<T> kind, List<RecordId> ids, String label) throws VisitProblem {
        store.change(label, tx -> ids.forEach(id -> tx.remove(kind, id)));
    }

    /** Puts photos aside for a reason, or takes them back in if the reason is empty. */
    public void setAside(List<PhotoId> photos, Optional<String> reason) throws VisitProblem {
        String what = photos.isEmpty() ? say("undo.no-photo") : new RowLabels(store.read()).photos(photos);
        String label = say(reason.isPresent() ? "undo.set-aside" : "undo.take-back", what);
        store.change(label, tx -> photos.forEach(photo -> tx.setAside(photo, reason)));
    }
}
