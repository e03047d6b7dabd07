package quarterlight.store;

import java.util.Objects;

/**
 * The visit was changed and the change is saved.
 *
 * @param label the edit's own label, also when it was undone or redone
 */
public record VisitChange(Way way, String label) {
    /** How it was changed. */
    public enum Way {
        EDIT,
        UNDO,
        REDO
    }

    public VisitChange {
        Objects.requireNonNull(way, "way");
        Objects.requireNonNull(label, "label");
    }
}
