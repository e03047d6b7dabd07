package quarterlight.settings;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The sentences that the user wrote in statements, {@code phrases.txt} in the settings folder: UTF-8, one a line, the oldest first. It may be
 * edited or deleted at any time. Not for the event thread.
 */
public final class PhraseFile {
    /** More are not offered; the oldest are let go. */
    private static final int MOST = 4000;

    private final Path file;

    /** @param settings the settings folder; need not exist */
    public PhraseFile(Path settings) {
        file = Objects.requireNonNull(settings, "settings").resolve("phrases.txt");
    }

    /** What was written in earlier statements; nothing if the file is not there or cannot be read. */
    public List<String> read() {
        if (!Files.isRegularFile(file)) {
            return List.of();
        }
        try {
            List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
            return List.copyOf(lines.subList(Math.max(0, lines.size() - MOST), lines.size()));
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    /** Remembers a sentence; nothing is lost but the offer if it cannot be written. */
    public boolean keep(String sentence) {
        String line = sentence.strip().replaceAll("\\s+", " ");
        if (line.isEmpty()) {
            return false;
        }
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            List<String> lines = new ArrayList<>(read());
            lines.add(line);
            if (lines.size() > MOST) {
                Files.write(file, lines.subList(lines.size() - MOST, lines.size()), StandardCharsets.UTF_8);
            } else {
                Files.writeString(
                        file,
                        line + "\n",
                        StandardCharsets.UTF_8,
                        StandardOpenOption.CREATE,
                        StandardOpenOption.APPEND);
            }
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
