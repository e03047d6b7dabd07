package quarterlight.file;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Names for files that replace nothing. */
public final class PlacedFile {
    private static final System.Logger LOG = System.getLogger(PlacedFile.class.getName());

    private PlacedFile() {}

    /**
     * Gives a file its name; whatever bears that name already stays. A hard link is made and the old name removed, so that the file system itself
     * refuses a name that is taken; where it knows no hard links, the name is looked for and the file then moved.
     *
     * @throws FileAlreadyExistsException if the name is taken, by whatever
     */
    public static void move(Path file, Path target) throws IOException {
        try {
            Files.createLink(target, file);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (UnsupportedOperationException | FileSystemException e) {
            LOG.log(System.Logger.Level.DEBUG, "no hard links here", e);
            Files.move(file, target);
            return;
        }
        Files.delete(file);
    }
}
