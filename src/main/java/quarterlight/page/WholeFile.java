package quarterlight.page;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file that appears whole or not at all. */
public final class WholeFile {
    private WholeFile() {}

    /** What the file shall hold. */
    public interface Content {
        void write(OutputStream out) throws IOException;
    }

    public static Path text(Path target, String text) throws IOException {
        return write(target, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** @return the target; what stood there before is replaced only once the new file is complete */
    public static Path write(Path target, Content content) throws IOException {
        Path temporary = target.resolveSibling("." + target.getFileName() + ".making");
        try {
            try (OutputStream out = Files.newOutputStream(temporary)) {
                content.write(out);
            }
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
            return target;
        } finally {
            Files.deleteIfExists(temporary);
        }
    }
}
