package quarterlight.store.folder;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;

/** The files that SQLite keeps beside a database in use, as they lie in the folder of a visit. */
public final class DatabaseFiles {
    private static final byte[] HOT = {(byte) 0xd9, (byte) 0xd5, 0x05, (byte) 0xf9, 0x20, (byte) 0xa1, 0x63, (byte) 0xd7
    };

    private final VisitFolder folder;

    public DatabaseFiles(VisitFolder folder) {
        this.folder = folder;
    }

    /** Whether commits lie in a write-ahead log that are not in the database yet. */
    public boolean hasLog() {
        try {
            return Files.size(folder.root().resolve("visit.db-wal")) > 0;
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Whether an edit that was cut off stands half in the database, with what it wrote over in a journal beside it.
     * <p>Source: SQLite file format, section 3, "The Rollback Journal": a journal that was not finished begins with eight known bytes.
     */
    public boolean hasHotJournal() {
        Path journal = folder.root().resolve("visit.db-journal");
        try (InputStream in = Files.newInputStream(journal)) {
            return Arrays.equals(in.readNBytes(HOT.length), HOT);
        } catch (IOException e) {
            return Files.exists(journal) && !Files.isReadable(journal);
        }
    }

    public boolean isQuiet() {
        return !hasLog() && !hasHotJournal();
    }

    /** The lock is an empty file; one that came with something in it is not opened but made anew. */
    public void clearLock() throws IOException {
        Path lock = folder.lock();
        boolean odd = Files.exists(lock, LinkOption.NOFOLLOW_LINKS)
                && (!Files.isRegularFile(lock, LinkOption.NOFOLLOW_LINKS) || Files.size(lock) > 0);
        if (odd) {
            Files.delete(lock);
        }
        for (String companion : new String[] {"-journal", "-wal", "-shm"}) {
            Files.deleteIfExists(lock.resolveSibling(lock.getFileName() + companion));
        }
    }
}
