package quarterlight.photo.worker;

import java.nio.file.Path;
import quarterlight.language.Retold;

/** A file brought its worker down, or took longer than it may. The next file is looked at by a new worker. */
public final class WorkerLost extends Exception {
    private static final long serialVersionUID = 1L;

    /** How a worker can be lost. */
    public enum Way {
        TIME,
        MEMORY,
        CRASH,
        CLOSED,
        NOT_STARTED
    }

    private final transient Path file;
    private final String reason;
    private final Way way;

    WorkerLost(Path file, Way way, String reason) {
        super(file + ": " + Retold.of(reason));
        this.file = file;
        this.way = way;
        this.reason = Retold.of(reason);
    }

    public Path file() {
        return file;
    }

    /** In words that can follow the file's name and a colon. */
    public String reason() {
        return reason;
    }

    public Way way() {
        return way;
    }

    /** Whether no worker can be started at all, which concerns every file. */
    public boolean isNotStarted() {
        return way == Way.NOT_STARTED;
    }

    /** Whether the workers were closed, since what they were for was broken off. */
    public boolean isClosed() {
        return way == Way.CLOSED;
    }
}
