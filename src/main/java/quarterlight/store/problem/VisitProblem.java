package quarterlight.store.problem;

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
        return "The visit " + path
                + " is no longer there: its folder was moved, or its drive was taken away. Connect the"
                + " drive or put the folder back, and open the visit again; every step before this one is saved in it.";
    }

    /** What is said of a visit whose disk fails while it is open. */
    static String noAnswer(Path path) {
        return "The disk with the visit " + path
                + " does not answer: its drive was taken away, or has a fault. Connect the drive again and open the visit"
                + " again; every step before this one is saved in it. If the disk still does not answer, check it.";
    }

    /** The folder of the visit. */
    public Path path() {
        return path;
    }
}
