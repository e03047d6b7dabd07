package quarterlight.cli.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** Standard input where a call names {@code -} in place of a file: put into a file for as long as the call lasts. */
public final class StandardInput implements AutoCloseable {
    /** How a call names it. */
    public static final String NAME = "-";

    /** How it is told to people. */
    private static final String TOLD = "standard input";

    /** More than any file that is read this way may have; the readers have bounds of their own. */
    private static final long MAX_BYTES = 64L << 20;

    private final InputStream in;
    private Path spooled = Path.of("");

    public StandardInput(InputStream in) {
        this.in = Objects.requireNonNull(in, "in");
    }

    /** Nothing stands there. */
    public static StandardInput empty() {
        return new StandardInput(InputStream.nullInputStream());
    }

    /** Whether a call means standard input or output. */
    public static boolean isMeant(Path named) {
        return named.toString().equals(NAME);
    }

    /** The file to read: the one named, or what standard input holds. */
    public Path file(Path named) throws IOException {
        if (!isMeant(named)) {
            return named;
        }
        if (spooled.toString().isEmpty()) {
            Path folder = Files.createTempDirectory("quarterlight-");
            spooled = folder.resolve("standard-input");
            long left = MAX_BYTES;
            byte[] block = new byte[1 << 16];
            try (var out = Files.newOutputStream(spooled)) {
                for (int n = in.read(block); n >= 0 && left > 0; n = in.read(block)) {
                    out.write(block, 0, n);
                    left -= n;
                }
            }
        }
        return spooled;
    }

    /** A sentence that may name the file, as people say it. */
    public String told(String sentence) {
        return spooled.toString().isEmpty()
                ? sentence
                : sentence.replace(spooled.toString(), TOLD)
                        .replace(spooled.getFileName().toString(), TOLD);
    }

    /** Removes the file. */
    @Override
    public void close() throws IOException {
        if (!spooled.toString().isEmpty()) {
            Files.deleteIfExists(spooled);
            Files.deleteIfExists(spooled.getParent());
            spooled = Path.of("");
        }
    }
}
