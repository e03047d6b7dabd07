package quarterlight.photo.originals;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Path;
import quarterlight.photo.Refusal;

/** The disk of the visit takes no more: it is full, read-only, or gone. */
public final class OriginalsUnwritable extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Path folder;

    public OriginalsUnwritable(Path folder, IOException cause) {
        super(say("problem.media.full", folder, Refusal.because(cause)), cause);
        this.folder = folder;
    }

    public Path folder() {
        return folder;
    }
}
