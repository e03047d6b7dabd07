package quarterlight.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Random;

/**
 * Room on a disk that is kept free by a file while something fills it, so that there is still enough to record what was done when the disk
 * is full. Where there is no such room to begin with, none is kept.
 */
public final class ReservedSpace implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(ReservedSpace.class.getName());
    private static final long MAX_BYTES = 2 << 20;
    private static final int PIECE = 1 << 16;

    private final Path file;

    private ReservedSpace(Path file) {
        this.file = file;
    }

    /** @param file a name that is free */
    public static ReservedSpace by(Path file) {
        ReservedSpace room = new ReservedSpace(file);
        byte[] piece = new byte[PIECE];
        // bytes that no file system can store in less room than they take
        new Random(1).nextBytes(piece);
        try (OutputStream out = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            long bytes = Math.min(MAX_BYTES, Files.getFileStore(file).getUsableSpace() / 2);
            for (long written = 0; written < bytes; written += PIECE) {
                out.write(piece);
            }
        } catch (IOException e) {
            LOG.log(System.Logger.Level.DEBUG, "no room to keep at " + file, e);
            room.close();
        }
        return room;
    }

    /** Gives the room back; nothing happens the second time. */
    @Override
    public void close() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "the room kept stays taken by " + file, e);
        }
    }
}
