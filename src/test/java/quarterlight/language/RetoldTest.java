package quarterlight.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is made in English and kept or handed on so is said in the language in hand. */
class RetoldTest {
    private static final Path JAVA =
            Path.of(System.getProperty("quarterlight.basedir", "."), "src/main/java/quarterlight");
    private static final Pattern ARGUMENT = Pattern.compile("\\{\\d}");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Pattern PROSE = Pattern.compile("[a-z]{2,} [a-z]{2,}");
    /** Where faults of files and remarks are made. */
    private static final List<String> MAKERS =
            List.of("photo", "diagram/file", "store/takeover", "capture/Plausibility.java", "settings/WalkFolder.java");
    /** For programmers and the log, or no sentence. */
    private static final Pattern NOT_TOLD = Pattern.compile(
            "IllegalArgument|IllegalState|AssertionError|requireNonNull|System\\.Logger|LOG\\.|OutOfMemoryError|MediaKind\\.|PROFILES|PRAGMA|SELECT|noneMatch|unknown"
                    + " kind of|a part of |a picture of |an answer of |HELP|UncheckedIO|constraint failed|Checked on"
                    + " receipt|rows left out|the log was cut");

    @Test
    void aRemarkWithinARemarkIsRetoldToo() throws Exception {
        String english =
                "The file is kept, but not shown: its picture data is damaged, or of a kind that cannot be shown.";
        assertThat(Retold.of(english)).isEqualTo(english);
        assertThat(german(english))
                .isEqualTo("Die Datei bleibt erhalten, wird aber nicht gezeigt: die Bilddaten sind beschädigt oder von"
                        + " einer Art, die nicht gezeigt werden kann.");
        assertThat(german("the front view is missing")).isEqualTo("es fehlt eine Ansicht: Vorderansicht");
        assertThat(german("zones hood and roof overlap by 12.5 % of the smaller in the top view"))
                .isEqualTo("die Zonen hood und roof überlappen sich um 12,5 % der kleineren; Ansicht: Draufsicht");
        assertThat(Language.MARKED.during(() -> Retold.of("a tile is damaged")))
                .isEqualTo(Sentences.MARK + "a tile is damaged" + Sentences.MARK_END);
        assertThat(german("rust along the seam")).isEqualTo("rust along the seam");
    }

    /** None is hidden by another, and each German one says its values. */
    @Test
    void everySentenceIsFoundByItsEnglish() throws Exception {
        Properties english = bundle("told");
        Properties german = bundle("told_de");
        assertThat(english).hasSizeGreaterThan(200);
        for (String key : english.stringPropertyNames()) {
            Object[] values = {"7Q1", "7Q2", "7Q3", "7Q4"};
            String made = new MessageFormat(english.getProperty(key), Locale.ROOT).format(values);
            assertThat(german(made))
                    .as(key)
                    .isEqualTo(new MessageFormat(german.getProperty(key), Locale.ROOT).format(values));
        }
    }

    @Test
    void whatTheReadersOfFilesSayIsToldInTheBundle() throws Exception {
        List<String> fragments = bundle("told").values().stream()
                .flatMap(text -> Stream.of(ARGUMENT.split(text.toString().replace("''", "'"))))
                .toList();
        List<String> strays = new ArrayList<>();
        int said = 0;
        for (String statement : statements()) {
            String whole = LITERAL.matcher(statement)
                    .results()
                    .map(found -> found.group(1).replace("\\\"", "\""))
                    .collect(Collectors.joining("\n"));
            // what stands on two lines of the source is one text
            for (String text :
                    whole.replaceAll("(?<=[a-z;,)-])\n(?= [a-z])", "").split("\n")) {
                if (PROSE.matcher(text).find()) {
                    said++;
                    String bare = text.strip().replace("%%", "%");
                    if (fragments.stream().noneMatch(one -> one.contains(bare))
                            && german(bare).equals(bare)) {
                        strays.add(text);
                    }
                }
            }
        }
        assertThat(said).isGreaterThan(120);
        assertThat(strays)
                .as("said by readers of files, and not in told.properties")
                .isEmpty();
    }

    private static List<String> statements() throws IOException {
        List<String> all = new ArrayList<>();
        for (String maker : MAKERS) {
            try (Stream<Path> files = Files.walk(JAVA.resolve(maker))) {
                for (Path file :
                        files.filter(one -> one.toString().endsWith(".java")).toList()) {
                    String code = Files.readString(file)
                            .replaceAll("(?s)/\\*.*?\\*/", "")
                            .replaceAll("(?m)//[^\"\n]*$", "");
                    Stream.of(code.split(";\n|\\{\n|}\n"))
                            .filter(statement -> !NOT_TOLD.matcher(statement).find())
                            .forEach(all::add);
                }
            }
        }
        return all;
    }

    private static String german(String english) throws Exception {
        return Language.GERMAN.during(() -> Retold.of(english));
    }

    private static Properties bundle(String name) throws IOException {
        Properties texts = new Properties();
        try (Reader in = new InputStreamReader(
                Sentences.class.getResourceAsStream(name + ".properties"), StandardCharsets.UTF_8)) {
            texts.load(in);
        }
        return texts;
    }
}
