package quarterlight.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What a process that was killed while it made something left behind, found again by its name and removed. */
public final class Leftovers {
    private static final System.Logger LOG = System.getLogger(Leftovers.class.getName());

    /** Folders only, of this program's own names; the second is how earlier versions called them. */
    private static final Pattern NAME =
            Pattern.compile("\\.unfinished-[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}|\\.making-\\d{5,}");

    private Leftovers() {}

    /** True of a name that only unfinished folders bear; what lies in one is never handed on. */
    public static boolean isName(String name) {
        return NAME.matcher(name).matches();
    }

    /** Removes the unfinished folders of processes that ended; never throws, since it stands before other work. */
    public static void clear(Path place) {
        if (!Files.isDirectory(place)) {
            return;
        }
        try (DirectoryStream<Path> found = Files.newDirectoryStream(place, ".{unfinished,making}-*")) {
            for (Path each : found) {
                clearOne(each);
            }
        } catch (IOException | DirectoryIteratorException e) {
            LOG.log(System.Logger.Level.WARNING, "leftovers could not be looked for in " + place, e);
        }
    }

    /**
     * Removes plain files that earlier versions called so while they made them; for folders of the program's own only. Never throws.
     *
     * @param glob names of files
     */
    public static void clearEarlier(Path folder, String glob) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, glob)) {
            for (Path each : found) {
                if (Files.isRegularFile(each, LinkOption.NOFOLLOW_LINKS)) {
                    Files.delete(each);
                    LOG.log(System.Logger.Level.INFO, "removed what an earlier version left unfinished: " + each);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            LOG.log(System.Logger.Level.WARNING, "leftovers could not be removed from " + folder, e);
        }
    }

    /** Removes what earlier versions called the target while they made it ({@code .NAME.making}); it stands nowhere else in use. Never throws. */
    static void clearEarlier(Path target) {
        Path earlier = target.resolveSibling("." + target.getFileName() + ".making");
        try {
            delete(earlier);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "a leftover could not be removed: " + earlier, e);
        }
    }

    private static void clearOne(Path folder) {
        try {
            if (isName(folder.getFileName().toString())
                    && Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
                    && isAbandoned(folder)) {
                delete(folder);
                LOG.log(System.Logger.Level.INFO, "removed what an earlier call left unfinished: " + folder);
            }
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "a leftover could not be removed: " + folder, e);
        }
    }

    /** A folder without a lock was left by an earlier version, or by a process that was killed before it took its lock. */
    private static boolean isAbandoned(Path folder) throws IOException {
        Path lock = folder.resolve(StagingFolder.LOCK);
        if (!Files.isRegularFile(lock, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.WRITE);
                FileLock taken = channel.tryLock()) {
            return taken != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    /** Deletes a folder with all that it holds; links are deleted, not followed. Nothing happens if it is not there. */
    public static void delete(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        List<Path> deepestFirst;
        try (Stream<Path> all = Files.walk(folder)) {
            deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path each : deepestFirst) {
            Files.delete(each);
        }
    }
}
