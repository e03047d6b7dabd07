package quarterlight.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bundles of sentences: none is missing, none is left over, and each language says the same things. */
class BundlesTest {
    private static final Path BASE = Path.of(System.getProperty("quarterlight.basedir", "."));
    private static final Path HOME = BASE.resolve("src/main/resources/quarterlight/language");
    private static final Pattern KEY = Pattern.compile("[\"']([a-z]+\\.[a-z0-9-]+(?:\\.[a-z0-9-]+)*\\.?)[\"']");
    private static final Pattern SAID = Pattern.compile("\\bsay\\(\\s*[\"']([^\"']+)[\"']\\s*[,)]");
    private static final Pattern LONE_APOSTROPHE = Pattern.compile("(?<!')'(?!')");

    @Test
    void everySentenceAskedForIsThereAndEveryOneThereIsAskedFor() throws IOException {
        Set<String> quoted = new TreeSet<>();
        Set<String> said = new TreeSet<>();
        for (String source : sources()) {
            KEY.matcher(source).results().forEach(found -> quoted.add(found.group(1)));
            SAID.matcher(source).results().forEach(found -> said.add(found.group(1)));
        }
        Set<String> keys = new TreeSet<>();
        for (Path file : bundles("")) {
            String area = file.getFileName().toString().replace(".properties", "");
            Set<String> own = read(file).keySet();
            assertThat(own).as("keys of " + area).allMatch(key -> key.startsWith(area + "."));
            keys.addAll(own);
        }
        said.removeIf(key -> key.endsWith(".") || keys.contains(key));
        assertThat(said).as("asked for, and in no bundle").isEmpty();
        Set<String> beginnings =
                quoted.stream().filter(text -> text.endsWith(".")).collect(Collectors.toCollection(TreeSet::new));
        keys.removeIf(key -> quoted.contains(key) || beginnings.stream().anyMatch(key::startsWith));
        assertThat(keys).as("in a bundle, and never asked for").isEmpty();
    }

    @Test
    void everyTextIsAPatternAndTakesWhatTheEnglishOneTakes() throws IOException {
        for (String language : List.of("", "_de")) {
            for (Path file : bundles(language)) {
                Map<String, String> english =
                        read(file.resolveSibling(file.getFileName().toString().replace("_de", "")));
                read(file).forEach((key, text) -> {
                    assertThat(LONE_APOSTROPHE.matcher(text).find())
                            .as("%s of %s: an apostrophe is written twice", key, file.getFileName())
                            .isFalse();
                    int arguments = new MessageFormat(text, Locale.ROOT).getFormatsByArgumentIndex().length;
                    String first = english.get(key);
                    if (first != null) {
                        assertThat(arguments)
                                .as("arguments of %s in %s", key, file.getFileName())
                                .isLessThanOrEqualTo(
                                        new MessageFormat(first, Locale.ROOT).getFormatsByArgumentIndex().length);
                    }
                });
            }
        }
    }

    /** Named here by what is still English, so that the list can only become shorter. */
    @Test
    void germanSaysWhatEnglishSays() throws IOException {
        List<String> missing = new ArrayList<>();
        for (Path file : bundles("")) {
            Path german = file.resolveSibling(file.getFileName().toString().replace(".properties", "_de.properties"));
            Set<String> said = Files.exists(german) ? read(german).keySet() : Set.of();
            read(file).keySet().stream().filter(key -> !said.contains(key)).forEach(missing::add);
        }
        assertThat(missing).as("said in English only").isEmpty();
    }

    private static Map<String, String> read(Path file) throws IOException {
        Properties properties = new Properties();
        if (Files.exists(file)) {
            try (Reader in = Files.newBufferedReader(file)) {
                properties.load(in);
            }
        }
        Map<String, String> texts = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
        return texts;
    }

    private static List<Path> bundles(String language) throws IOException {
        try (Stream<Path> files = Files.list(HOME)) {
            return files.filter(file -> {
                        String name = file.getFileName().toString();
                        return language.isEmpty()
                                ? name.endsWith(".properties") && !name.contains("_")
                                : name.endsWith(language + ".properties");
                    })
                    .sorted()
                    .toList();
        }
    }

    private static List<String> sources() throws IOException {
        List<String> all = new ArrayList<>();
        for (String folder : List.of("src/main/java", "src/main/resources/quarterlight/page")) {
            try (Stream<Path> files = Files.walk(BASE.resolve(folder))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    all.add(Files.readString(file));
                }
            }
        }
        return all;
    }
}
