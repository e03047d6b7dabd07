package quarterlight.store.problem;

import java.nio.file.Path;

/** The visit could not be written; what stood in it before still does. */
public final class VisitUnwritable extends VisitProblem {
    private static final String AGAIN = " Do this step again if it is missing.";

    public VisitUnwritable(Path path, String reason, Throwable cause) {
        super(
                path,
                "The visit " + path + " cannot be written: " + reason
                        + ". Nothing of this step was kept. Check the disk and the folder's permissions.",
                cause);
    }

    private VisitUnwritable(String sentence, Path path, Throwable cause) {
        super(path, sentence, cause);
    }

    /** The folder was there when the visit was opened and is no more. */
    public static VisitUnwritable gone(Path path) {
        return new VisitUnwritable(VisitProblem.takenAway(path) + AGAIN, path, null);
    }

    /** The disk failed while the visit was open. */
    public static VisitUnwritable noAnswer(Path path, Throwable cause) {
        return new VisitUnwritable(VisitProblem.noAnswer(path) + AGAIN, path, cause);
    }
}
