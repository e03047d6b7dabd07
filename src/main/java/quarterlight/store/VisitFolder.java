package quarterlight.store;

import java.nio.file.Path;
import java.util.Objects;

/** Where things lie in the folder of a visit. Immutable. */
public record VisitFolder(Path root) {
    public VisitFolder {
        Objects.requireNonNull(root, "root");
    }

    /** The only file that is edited. */
    public Path database() {
        return root.resolve("visit.db");
    }

    /** Photos and films as they came. */
    public Path originals() {
        return root.resolve("originals");
    }

    /** A cache; may be deleted at any time. */
    public Path thumbs() {
        return root.resolve("thumbs.db");
    }

    /** What was made for the buyer. */
    public Path pages() {
        return root.resolve("pages");
    }

    /** Empty; locked by the process that edits. */
    Path lock() {
        return root.resolve("visit.lock");
    }
}
