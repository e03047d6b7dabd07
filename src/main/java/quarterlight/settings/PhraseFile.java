package quarterlight.settings;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quarterlight.file.DurableFiles;
import quarterlight.file.PlainFile;

/**
 * The sentences that the user wrote in statements, {@code phrases.txt} in the settings folder: UTF-8, one a line, the oldest first, written whole. It may be
 * edited or deleted at any time. Not for the event thread.
 */
public final class PhraseFile {
    /** More are not offered; the oldest are let go. */
    private static final int MAX_LINES = 4000;

    private static final int MAX_BYTES = 16 << 20;

    private final Path file;

    /** @param settings the settings folder; need not exist */
    public PhraseFile(Path settings) {
        file = Objects.requireNonNull(settings, "settings").resolve("phrases.txt");
    }

    /** What was written in earlier statements; nothing if the file is not there or cannot be read. */
    public List<String> read() {
        try {
            return List.copyOf(lines());
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    private List<String> lines() throws IOException {
        if (!Files.exists(file)) {
            return List.of();
        }
        List<String> lines = PlainFile.text(file, MAX_BYTES).lines().toList();
        return lines.subList(Math.max(0, lines.size() - MAX_LINES), lines.size());
    }

    /** Remembers a sentence; nothing is lost but the offer if it cannot be written. A file that cannot be read is left as it is. */
    public boolean keep(String sentence) {
        String line = sentence.strip().replaceAll("\\s+", " ");
        if (line.isEmpty()) {
            return false;
        }
        try {
            List<String> lines = new ArrayList<>(lines());
            lines.add(line);
            DurableFiles.text(
                    file, String.join("\n", lines.subList(Math.max(0, lines.size() - MAX_LINES), lines.size())) + "\n");
            return true;
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }
}
