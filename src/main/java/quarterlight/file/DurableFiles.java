package quarterlight.file;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;

/**
 * Files and folders that last: once a method has returned, a power cut takes nothing of what it did.
 * <p>A file lasts when its content was forced to the disk and then the folder that names it (POSIX fsync of both; a rename lasts when the
 * folder was forced after it). A system that opens no folder as a file, such as Windows, keeps its names in a journal of its own, so there
 * only the content is forced.
 */
public final class DurableFiles {
    private static final System.Logger LOG = System.getLogger(DurableFiles.class.getName());

    private DurableFiles() {}

    /** What a file shall hold. */
    @FunctionalInterface
    public interface Content {
        void write(OutputStream out) throws IOException;
    }

    /**
     * Writes a file that appears whole or not at all, and lasts. What stood there before is replaced only once the new file lies complete on
     * the disk; the folder is made if it is not there.
     *
     * @return the target
     */
    public static Path write(Path target, Content content) throws IOException {
        Path place = target.toAbsolutePath();
        createFolders(place.getParent());
        Leftovers.clearEarlier(place);
        try (StagingFolder unfinished = StagingFolder.in(place.getParent())) {
            replace(fill(unfinished.folder().resolve("made"), content), place);
        }
        return target;
    }

    /** The same, of a text in UTF-8. */
    public static Path text(Path target, String text) throws IOException {
        return write(target, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /**
     * Writes a file whose content lasts; its name lasts once its folder is forced. For files within an {@link StagingFolder} folder.
     *
     * @return the file
     */
    public static Path fill(Path file, Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(
                        file,
                        StandardOpenOption.CREATE,
                        StandardOpenOption.TRUNCATE_EXISTING,
                        StandardOpenOption.WRITE);
                OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel))) {
            content.write(out);
            out.flush();
            channel.force(true);
        }
        return file;
    }

    /** The same, of a text in UTF-8. */
    public static Path fillText(Path file, String text) throws IOException {
        return fill(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Makes a folder and those above it that are not there; each lasts. */
    public static void createFolders(Path folder) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path each = folder.toAbsolutePath(); each != null && !Files.isDirectory(each); each = each.getParent()) {
            missing.push(each);
        }
        Files.createDirectories(folder);
        for (Path made : missing) {
            forceFolder(made.getParent());
        }
    }

    /** Brings the content of a file to the disk for good. */
    public static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Brings the names in a folder to the disk for good. */
    public static void forceFolder(Path folder) throws IOException {
        FileChannel opened;
        try {
            opened = FileChannel.open(folder, StandardOpenOption.READ);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.DEBUG, "this system forces no folder by itself: " + folder, e);
            return;
        }
        try (FileChannel channel = opened) {
            channel.force(true);
        }
    }

    /** Brings a file, or a folder with all that is in it, to the disk for good; links are not followed. */
    public static void forceAll(Path made) throws IOException {
        List<Path> all;
        try (Stream<Path> walk = Files.walk(made)) {
            all = walk.toList();
        }
        try {
            all.parallelStream().forEach(DurableFiles::forceOne);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static void forceOne(Path each) {
        try {
            if (Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS)) {
                forceFolder(each);
            } else if (Files.isRegularFile(each, LinkOption.NOFOLLOW_LINKS)) {
                force(each);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Moves a file or folder, whose content lasts already, to its name within the same file system; the name lasts.
     *
     * @throws FileAlreadyExistsException if something is at the target
     */
    public static void move(Path made, Path target) throws IOException {
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(target.toString());
        }
        Files.move(made, target);
        forceFolder(target.toAbsolutePath().getParent());
    }

    /** Moves a file, whose content lasts already, to its name in place of what stood there; the name lasts. */
    public static void replace(Path made, Path target) throws IOException {
        rename(made, target);
        forceFolder(target.toAbsolutePath().getParent());
    }

    /** Moves a file to its name in place of what stood there; the name lasts only once the folder is forced. */
    public static void rename(Path made, Path target) throws IOException {
        try {
            Files.move(made, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(made, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
