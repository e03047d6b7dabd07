package quarterlight.store.library;

import java.nio.file.Path;

/** The index cannot be read or written. Nothing is lost: it is only a cache. */
public final class LibraryUnusable extends Exception {
    LibraryUnusable(Path file, Throwable cause) {
        super(
                "the index of visits " + file + " cannot be used (" + cause.getMessage()
                        + "); delete it, it is made anew",
                cause);
    }
}
