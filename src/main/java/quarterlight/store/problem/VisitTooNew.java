package quarterlight.store.problem;

import java.nio.file.Path;

/** The visit was written by a later version of the program. */
public final class VisitTooNew extends VisitProblem {
    private final int found;
    private final int known;

    public VisitTooNew(Path path, int found, int known) {
        super(
                path,
                "The visit " + path + " has schema " + found + ", and this program knows schemas up to " + known
                        + ". Open it with the version that wrote it, or a later one.",
                null);
        this.found = found;
        this.known = known;
    }

    public int found() {
        return found;
    }

    public int known() {
        return known;
    }
}
