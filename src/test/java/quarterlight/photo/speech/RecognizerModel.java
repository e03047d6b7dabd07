package quarterlight.photo.speech;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A model for tests, made without training, so it hears no words; set by {@code -Dquarterlight.recognizer=FILE}, else looked for beside the project. Tests that
 * need it are skipped without it.
 */
public final class RecognizerModel {
    private static final Path FILE = Path.of(System.getProperty(
            "quarterlight.recognizer",
            Path.of(System.getProperty("quarterlight.basedir", "."))
                    .resolve("../shared/spoken/recognizer/for-tests-ggml-tiny.en.bin")
                    .toString()));

    private RecognizerModel() {}

    public static Path file() {
        assumeTrue(Files.isRegularFile(FILE), "skipped, since there is no model for tests at " + FILE);
        return FILE;
    }

    /** Begins as a model does and says that it has 2 billion words, over which the library ends its process. */
    public static Path damaged(Path file) throws IOException {
        byte[] damaged = new byte[4096];
        byte[] head = {'l', 'm', 'g', 'g', -1, -1, -1, 0x7f};
        System.arraycopy(head, 0, damaged, 0, head.length);
        Path written = Files.write(file, damaged);
        assertThat(written).isNotEmptyFile();
        return written;
    }
}
