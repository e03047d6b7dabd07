package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the window says comes from its bundle: no two words in a row stand in its code, but for those listed here, which nobody reads in it. */
class StrayWordsTest {
    /** The list can only become shorter: one that is gone from the code has to go here. */
    private static final Set<String> READ_BY_NOBODY = Set.of(
            "CheckTable: take back",
            "Glance: <html><body style='width:",
            "PhotoTransfer: photos of the visit",
            "SoundDevice: no sound: ",
            "Typeface: Source Sans 3");

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern TWO_WORDS = Pattern.compile("[A-Za-z]{2,}[,;:.]? +(?:[a-z] +)?[A-Za-z]{2,}");
    /** Said to the log, or to who wrote the code. */
    private static final Pattern TO_NO_USER =
            Pattern.compile("LOG\\.log|Exception\\(|Error\\(|requireNonNull|@Suppress");
    /** Keys, constraints of the layout, styles of the look. */
    private static final Pattern NO_WORDS = Pattern.compile("(?:shift|ctrl|control|alt|meta|menu|pressed) .*"
            + "|.*\\b(?:insets|wmin|hmin|hmax|wmax|growx|growy|grow|gap\\w*|span|wrap|split|align[xy]?|ax|ay|push\\w*|hidemode|newline|cell"
            + "|dock|sizegroup|sg)\\b.*"
            + "|.*(?:\\$\\w|[Bb]ackground:|[Ff]oreground:|font:|font-family|margin:).*"
            + "|[wh] [\\d!: ]+.*");

    @Test
    void noSentenceStandsInTheCode() throws IOException {
        Set<String> found = new TreeSet<>();
        for (Path file : sources()) {
            String code = Files.readString(file).replaceAll("(?s)/\\*.*?\\*/", "");
            for (String line : code.split("\n")) {
                String said = line.replaceAll("(?:^|\\s)//.*", "");
                if (!TO_NO_USER.matcher(said).find()) {
                    LITERAL.matcher(said)
                            .results()
                            .map(literal -> literal.group(1))
                            .filter(text -> TWO_WORDS.matcher(text).find()
                                    && !NO_WORDS.matcher(text).matches())
                            .forEach(text ->
                                    found.add(file.getFileName().toString().replace(".java", "") + ": " + text));
                }
            }
        }
        Set<String> strays = new TreeSet<>(found);
        strays.removeAll(READ_BY_NOBODY);
        assertThat(strays).as("say them by key, in English and German").isEmpty();
        Set<String> gone = new TreeSet<>(READ_BY_NOBODY);
        gone.removeIf(found::contains);
        assertThat(gone).as("no longer in the code: take them off the list").isEmpty();
    }

    private static List<Path> sources() throws IOException {
        Path root = Path.of(System.getProperty("quarterlight.basedir", "."), "src/main/java/quarterlight/ui");
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }
}
