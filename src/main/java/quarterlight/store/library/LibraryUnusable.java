package quarterlight.store.library;

import java.nio.file.Path;
import quarterlight.language.Retold;

/** The index cannot be read or written. Nothing is lost: it is only a cache. */
public final class LibraryUnusable extends Exception {
    LibraryUnusable(Path file, Throwable cause) {
        super(
                Retold.of("the index of visits " + file + " cannot be used (" + cause.getMessage()
                        + "); delete it, it is made anew"),
                cause);
    }
}
