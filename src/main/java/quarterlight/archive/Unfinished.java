package quarterlight.archive;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** A folder beside a target in which it is made, so that it appears whole or not at all. What is left in it goes when it is closed. */
public final class Unfinished implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(Unfinished.class.getName());

    private final Path target;
    private final Path folder;

    private Unfinished(Path target, Path folder) {
        this.target = target;
        this.folder = folder;
    }

    /** @throws FileAlreadyExistsException if something is at the target */
    public static Unfinished beside(Path target) throws IOException {
        Path place = target.toAbsolutePath().normalize();
        requireFree(place);
        return new Unfinished(place, Files.createDirectory(place.resolveSibling(".unfinished-" + UUID.randomUUID())));
    }

    private static void requireFree(Path place) throws FileAlreadyExistsException {
        if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(place.toString());
        }
    }

    public Path folder() {
        return folder;
    }

    /** Brings a file that was made in the folder to the disk for good. */
    public static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Moves what was made to the target. */
    public void deliver(Path made) throws IOException {
        requireFree(target);
        Files.move(made, target);
    }

    @Override
    public void close() {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path each : deepestFirst) {
                Files.delete(each);
            }
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "what was being made stays at " + folder, e);
        }
    }
}
