package quarterlight.store.problem;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;
import quarterlight.language.Retold;

/** The visit is there and cannot be read. */
public final class VisitUnreadable extends VisitProblem {
    public VisitUnreadable(Path path, String reason, Throwable cause) {
        super(path, say("problem.unreadable", path, Retold.of(reason)), cause);
    }

    private VisitUnreadable(String sentence, Path path, Throwable cause) {
        super(path, sentence, cause);
    }

    /** The folder was there when the visit was opened and is no more. */
    public static VisitUnreadable gone(Path path, Throwable cause) {
        return new VisitUnreadable(VisitProblem.takenAway(path), path, cause);
    }

    /** The disk failed while the visit was open. */
    public static VisitUnreadable noAnswer(Path path, Throwable cause) {
        return new VisitUnreadable(VisitProblem.noAnswer(path), path, cause);
    }
}
