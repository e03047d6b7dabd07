package quarterlight.store.problem;

import java.nio.file.Path;

/** The visit could not be written; what stood in it before still does. */
public final class VisitUnwritable extends VisitProblem {
    public VisitUnwritable(Path path, String reason, Throwable cause) {
        super(
                path,
                "The visit " + path + " cannot be written: " + reason
                        + ". Nothing of this step was kept. Check the disk and the folder's permissions.",
                cause);
    }

    private VisitUnwritable(Path path, String sentence) {
        super(path, sentence, null);
    }

    /** The folder was there when the visit was opened and is no more. */
    public static VisitUnwritable gone(Path path) {
        return new VisitUnwritable(path, VisitProblem.takenAway(path) + " Do this step again if it is missing.");
    }
}
