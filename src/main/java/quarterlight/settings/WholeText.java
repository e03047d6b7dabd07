package quarterlight.settings;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a small text of the settings folder whole or not at all. */
public final class WholeText {
    private WholeText() {}

    /** What stood there before is replaced only once the new text lies complete on the disk; the folder is made if it is not there. */
    public static void write(Path file, String text) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        Path unfinished = Files.createTempFile(folder, "unfinished", ".tmp");
        try {
            Files.writeString(unfinished, text, StandardCharsets.UTF_8);
            try {
                Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }
}
