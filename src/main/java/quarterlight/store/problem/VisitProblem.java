package quarterlight.store.problem;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;
import java.util.Objects;

/** A visit could not be made, opened, read or saved. The message is a full sentence: what, where, what to do. */
public abstract sealed class VisitProblem extends Exception
        permits VisitExists, VisitMissing, VisitLocked, VisitTooNew, VisitUnreadable, VisitUnwritable {
    private final transient Path path;

    VisitProblem(Path path, String message, Throwable cause) {
        super(message, cause);
        this.path = Objects.requireNonNull(path, "path");
    }

    /** What is said of a visit whose folder was taken away while it was open. */
    static String takenAway(Path path) {
        return say("problem.gone", path);
    }

    /** What is said of a visit whose disk fails while it is open. */
    static String noAnswer(Path path) {
        return say("problem.no-answer", path);
    }

    /** The folder of the visit. */
    public Path path() {
        return path;
    }
}
