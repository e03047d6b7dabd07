package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of the window: none is missing, none is left over. */
class MessagesTest {
    private static final Pattern QUOTED = Pattern.compile("\"([a-z][a-z0-9-]*(?:\\.[a-z0-9-]*)+)\"");
    private static final Pattern GET = Pattern.compile("texts(?:\\(\\))?\\s*\\.get\\(\\s*\"([^\"]+)\"\\s*[,)]");

    @Test
    void everyKeyAskedForIsThere() throws IOException {
        Set<String> known = keys();
        List<String> missing = sources().stream()
                .flatMap(source -> found(GET, source).stream())
                .filter(key -> !key.endsWith("."))
                .filter(key -> !known.contains(key))
                .distinct()
                .toList();
        assertThat(missing).isEmpty();
    }

    @Test
    void everyKeyIsUsed() throws IOException {
        Set<String> quoted = new TreeSet<>();
        for (String source : sources()) {
            quoted.addAll(found(QUOTED, source));
        }
        Set<String> unused = keys().stream()
                .filter(key -> quoted.stream().noneMatch(text -> key.equals(text) || isBuiltFrom(key, text)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(unused).isEmpty();
    }

    /** Keys such as {@code layer.rust} are put together from a beginning that stands in the source with its dot. */
    private static boolean isBuiltFrom(String key, String text) {
        return text.endsWith(".") && key.startsWith(text)
                || key.endsWith(".named") && key.equals(text + ".named")
                || key.endsWith(".letter") && key.equals(text + ".letter")
                || key.endsWith(".tip") && (key.equals(text + ".tip") || text.endsWith(".") && key.startsWith(text));
    }

    private static List<String> found(Pattern pattern, String source) {
        Matcher matcher = pattern.matcher(source);
        return Stream.iterate(matcher.find(), Boolean::booleanValue, more -> matcher.find())
                .map(more -> matcher.group(1))
                .toList();
    }

    private static Set<String> keys() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = MessagesTest.class.getResourceAsStream("/quarterlight/ui/messages.properties")) {
            properties.load(in);
        }
        return new TreeSet<>(properties.stringPropertyNames());
    }

    private static List<String> sources() throws IOException {
        Path root = Path.of(System.getProperty("quarterlight.basedir", "."), "src/main/java/quarterlight/ui");
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .map(MessagesTest::text)
                    .toList();
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
