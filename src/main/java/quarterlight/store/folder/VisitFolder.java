package quarterlight.store.folder;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import quarterlight.file.Leftovers;

/** Where things lie in the folder of a visit. Immutable. */
public record VisitFolder(Path root) {
    private static final System.Logger LOG = System.getLogger(VisitFolder.class.getName());

    public VisitFolder {
        Objects.requireNonNull(root, "root");
    }

    /** The only file that is edited. */
    public Path database() {
        return root.resolve("visit.db");
    }

    /** The end of the edit log and the seal of the computer that wrote it. */
    public Path head() {
        return root.resolve("visit.head");
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

    /**
     * Removes what a process that was killed left behind: unfinished folders, and copies of an old database that are empty or were never
     * finished, as their journals show. To be called only by the one process that edits the visit.
     */
    public void clearLeftovers() {
        Leftovers.clear(root);
        Leftovers.clear(pages());
        Leftovers.clearEarlier(pages(), ".*.making");
        Leftovers.clear(root.resolve("diagrams"));
        Leftovers.clearEarlier(root.resolve("diagrams"), "*.svg.new");
        try (DirectoryStream<Path> copies = Files.newDirectoryStream(root, "visit-schema-*.db")) {
            for (Path copy : copies) {
                Path journal = copy.resolveSibling(copy.getFileName() + "-journal");
                if (Files.size(copy) == 0 || Files.exists(journal)) {
                    Files.delete(copy);
                    Files.deleteIfExists(journal);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            LOG.log(System.Logger.Level.WARNING, "unfinished copies could not be removed from " + root, e);
        }
    }

    /** Empty; locked by the process that edits. */
    Path lock() {
        return root.resolve("visit.lock");
    }
}
