package quarterlight.store.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Optional;

/**
 * The place of a database that was opened. A system may let a program go on writing to a file that was moved, deleted, or lies on a drive that was taken away; this
 * tells whether what was opened still lies where it was.
 *
 * @param key what the file system knows the file by; nothing on systems that do not tell
 */
public record DatabasePlace(Path database, Optional<Object> key) {
    public DatabasePlace {
        Objects.requireNonNull(database, "database");
        Objects.requireNonNull(key, "key");
    }

    public static DatabasePlace of(Path database) {
        return new DatabasePlace(database, keyOf(database));
    }

    /** Whether the same file lies there. */
    public boolean isThere() {
        return Files.exists(database) && (key.isEmpty() || key.equals(keyOf(database)));
    }

    private static Optional<Object> keyOf(Path database) {
        try {
            return Optional.ofNullable(
                    Files.readAttributes(database, BasicFileAttributes.class).fileKey());
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
