package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quarterlight.visit.trial.SignKind;

/** The words of the window: none is missing, none is left over. */
class MessagesTest {
    private static final Pattern QUOTED = Pattern.compile("\"([a-z][a-z0-9-]*(?:\\.[a-z0-9-]*)+)\"");
    private static final Pattern GET = Pattern.compile("texts(?:\\(\\))?\\s*\\.get\\(\\s*\"([^\"]+)\"\\s*[,)]");

    private static final List<String> FILES = List.of("messages.properties", "messages_de.properties");
    private static final List<List<String>> LETTERS = List.of(
            List.of("menu\\.(visit|edit|view|station|help)\\.letter"),
            List.of("notes\\.letter\\.[a-z_]{3,}(?<!name)"),
            List.of("notes\\.trial\\.key\\..*"),
            List.of("notes\\.claim\\.key\\..*"),
            List.of("marks\\.fitted\\.key\\..*"),
            List.of("words\\.letter\\.(yes|no)"),
            List.of(
                    "words\\.letter\\.(works|works_with_a_fault|bypassed|does_not|not_tried|not_fitted|none|some|heavy)"),
            List.of("words\\.letter\\.(seller|owner|papers|other)"));

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

    @Test
    void germanHasEverySentenceWithTheSameArguments() throws IOException {
        Map<String, String> english = texts("messages.properties");
        Map<String, String> german = texts("messages_de.properties");
        assertThat(german.keySet()).isEqualTo(english.keySet());
        List<String> amiss = english.keySet().stream()
                .filter(key -> german.get(key).isBlank()
                        || german.get(key).contains("\ufffd")
                        || !arguments(english.get(key)).equals(arguments(german.get(key))))
                .toList();
        assertThat(amiss).isEmpty();
    }

    /** What is put together by choice stands beside other words: each pattern has to be one, and say something for none, one and many. */
    @Test
    void everyPatternCanBeFilled() throws IOException {
        for (String file : FILES) {
            texts(file).forEach((key, pattern) -> {
                for (int n = 0; n < 3; n++) {
                    Object[] numbers = {n, n, n, n, n};
                    if (!arguments(pattern).isEmpty()) {
                        assertThat(new MessageFormat(pattern, Locale.GERMANY).format(numbers))
                                .as(file + ": " + key)
                                .doesNotContain("{");
                    }
                }
            });
        }
    }

    /** Two commands on one letter: the second could never be reached by it. */
    @Test
    void lettersAreTakenOnce() throws IOException {
        for (String file : FILES) {
            Map<String, String> texts = texts(file);
            for (List<String> group : LETTERS) {
                List<String> letters = texts.keySet().stream()
                        .filter(key -> group.stream().anyMatch(key::matches))
                        .map(texts::get)
                        .toList();
                assertThat(letters)
                        .as(file + ": " + group)
                        .hasSizeGreaterThan(1)
                        .doesNotHaveDuplicates()
                        .allMatch(letter -> letter.matches("[A-Z]"));
            }
            List<String> menus = List.of("menu.visit", "menu.edit", "menu.view", "menu.station", "menu.help");
            assertThat(menus)
                    .allMatch(key -> texts.get(key).toUpperCase(Locale.ROOT).contains(texts.get(key + ".letter")));
            assertThat(texts.get("signs.letters").chars().distinct().filter(c -> "SNP".indexOf(c) < 0))
                    .as(file)
                    .hasSize(SignKind.values().length);
        }
    }

    /** The numbers of the arguments, also of those within a choice. */
    private static Set<String> arguments(String pattern) {
        return new TreeSet<>(found(Pattern.compile("\\{(\\d)"), pattern));
    }

    private static Map<String, String> texts(String file) throws IOException {
        Properties properties = new Properties();
        try (InputStream in = MessagesTest.class.getResourceAsStream("/quarterlight/ui/" + file)) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        Map<String, String> texts = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
        return texts;
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
        return texts("messages.properties").keySet();
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
