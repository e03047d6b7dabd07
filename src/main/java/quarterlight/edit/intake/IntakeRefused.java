package quarterlight.edit.intake;

import java.nio.file.Path;

/** A folder cannot be taken in at all; nothing was changed. The message is a full sentence: what, where, what to do. */
public final class IntakeRefused extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Path folder;

    IntakeRefused(Path folder, String message) {
        super(folder + ": " + message);
        this.folder = folder;
    }

    public Path folder() {
        return folder;
    }
}
