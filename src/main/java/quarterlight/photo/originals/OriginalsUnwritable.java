package quarterlight.photo.originals;

import java.io.IOException;
import java.nio.file.Path;
import quarterlight.photo.Refusal;

/** The disk of the visit takes no more: it is full, read-only, or gone. */
public final class OriginalsUnwritable extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Path folder;

    public OriginalsUnwritable(Path folder, IOException cause) {
        super(
                folder + ": the disk of the visit can no longer be used (" + Refusal.because(cause)
                        + "); what was taken in before is safe, make room and take the rest in again",
                cause);
        this.folder = folder;
    }

    public Path folder() {
        return folder;
    }
}
