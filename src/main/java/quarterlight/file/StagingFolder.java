package quarterlight.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * A folder beside a target in which it is made, so that it appears whole or not at all. What is left in it goes when it is closed; what a
 * process that ended before left behind goes when the next folder is made at the same place ({@link Leftovers}), which a lock on a file in
 * the folder tells from one that is in use.
 */
public final class StagingFolder implements AutoCloseable {
    static final String PREFIX = ".unfinished-";
    static final String LOCK = "making.lock";
    private static final int MAX_ATTEMPTS = 3;
    private static final System.Logger LOG = System.getLogger(StagingFolder.class.getName());

    private final Path target;
    private final Path folder;
    private final FileChannel held;

    private StagingFolder(Path target, Path folder, FileChannel held) {
        this.target = target;
        this.folder = folder;
        this.held = held;
    }

    /** @throws FileAlreadyExistsException if something is at the target */
    public static StagingFolder beside(Path target) throws IOException {
        Path place = target.toAbsolutePath().normalize();
        requireFree(place);
        Leftovers.clearEarlier(place);
        return made(place, place.getParent());
    }

    /** In a folder that is there, for files that are to lie in it. */
    public static StagingFolder in(Path folder) throws IOException {
        return made(folder, folder);
    }

    private static StagingFolder made(Path target, Path place) throws IOException {
        Leftovers.clear(place);
        for (int attempt = 1; ; attempt++) {
            Path folder = Files.createDirectory(place.resolve(PREFIX + UUID.randomUUID()));
            try {
                return new StagingFolder(target, folder, locked(folder.resolve(LOCK)));
            } catch (NoSuchFileException e) {
                if (attempt == MAX_ATTEMPTS) {
                    throw e;
                }
                LOG.log(
                        System.Logger.Level.DEBUG,
                        "another process took the folder for a leftover before it was locked",
                        e);
            }
        }
    }

    private static FileChannel locked(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try {
            FileLock taken = channel.tryLock();
            LOG.log(System.Logger.Level.DEBUG, (taken == null ? "no lock on " : "locked ") + file);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.DEBUG, "this disk knows no locks: " + file, e);
        }
        return channel;
    }

    private static void requireFree(Path place) throws FileAlreadyExistsException {
        if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(place.toString());
        }
    }

    public Path folder() {
        return folder;
    }

    /**
     * Forces what was made to the disk and moves it to the target; then it lasts.
     *
     * @throws FileAlreadyExistsException if something came to the target meanwhile
     */
    public void deliver(Path made) throws IOException {
        requireFree(target);
        DurableFiles.forceAll(made);
        DurableFiles.move(made, target);
    }

    @Override
    public void close() {
        try {
            held.close();
            Leftovers.delete(folder);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "what was being made stays at " + folder, e);
        }
    }
}
