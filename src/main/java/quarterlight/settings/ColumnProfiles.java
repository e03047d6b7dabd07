package quarterlight.settings;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;
import quarterlight.file.DurableFiles;

/**
 * How the user's tables from other programs are read, one small file for each profile in {@code columns} of the settings folder: UTF-8
 * keys and values. Any may be edited or deleted at any time. Not for the event thread.
 */
public final class ColumnProfiles {
    private static final String ENDING = ".properties";
    private static final String NAME = "[\\p{L}\\p{N}][\\p{L}\\p{N} _-]{0,59}";

    private final Path folder;

    /** @param settings the settings folder; need not exist */
    public ColumnProfiles(Path settings) {
        folder = Objects.requireNonNull(settings, "settings").resolve("columns");
    }

    /** True if a profile may be called so: letters, digits, blanks, hyphens, 60 at most. */
    public static boolean isName(String name) {
        return name.matches(NAME);
    }

    /** The names of the profiles that are kept, in alphabetical order. */
    public List<String> names() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ENDING))
                    .map(name -> name.substring(0, name.length() - ENDING.length()))
                    .filter(ColumnProfiles::isName)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** What a profile says; empty if there is none of this name, or it cannot be read. */
    public Optional<Map<String, String>> read(String name) {
        if (!isName(name) || !Files.isRegularFile(file(name))) {
            return Optional.empty();
        }
        Properties properties = new Properties();
        try (Reader in = Files.newBufferedReader(file(name), StandardCharsets.UTF_8)) {
            properties.load(in);
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
        Map<String, String> text = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> text.put(key, properties.getProperty(key)));
        return Optional.of(text);
    }

    /** Keeps a profile in place of what was kept under its name. */
    public void keep(String name, Map<String, String> text) throws IOException {
        if (!isName(name)) {
            throw new IllegalArgumentException("no name of a profile: " + name);
        }
        Properties properties = new Properties();
        properties.putAll(text);
        StringWriter lines = new StringWriter();
        properties.store(lines, null);
        DurableFiles.text(file(name), lines.toString());
    }

    private Path file(String name) {
        return folder.resolve(name + ENDING);
    }
}
