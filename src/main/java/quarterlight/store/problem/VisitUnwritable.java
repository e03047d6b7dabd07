package quarterlight.store.problem;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;
import quarterlight.language.Retold;

/** The visit could not be written; what stood in it before still does. */
public final class VisitUnwritable extends VisitProblem {
    public VisitUnwritable(Path path, String reason, Throwable cause) {
        super(path, say("problem.unwritable", path, Retold.of(reason)), cause);
    }

    private VisitUnwritable(String sentence, Path path, Throwable cause) {
        super(path, sentence, cause);
    }

    /** The folder was there when the visit was opened and is no more. */
    public static VisitUnwritable gone(Path path) {
        return new VisitUnwritable(say("problem.again", VisitProblem.takenAway(path)), path, null);
    }

    /** The disk failed while the visit was open. */
    public static VisitUnwritable noAnswer(Path path, Throwable cause) {
        return new VisitUnwritable(say("problem.again", VisitProblem.noAnswer(path)), path, cause);
    }
}
