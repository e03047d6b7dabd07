package quarterlight.store.problem;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;

/** The visit was written by a later version of the program. */
public final class VisitTooNew extends VisitProblem {
    private final int found;
    private final int known;

    public VisitTooNew(Path path, int found, int known) {
        super(path, say("problem.too-new", path, found, known), null);
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
