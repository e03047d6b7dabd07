package quarterlight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every file that the guide to adding something names is where it says. */
class AddingGuideTest {
    private static final Path ROOT = Path.of(System.getProperty("quarterlight.basedir", "."));
    private static final Pattern FILE = Pattern.compile("`([a-z][\\w./-]*/[\\w.-]+\\.(?:java|csv|md|properties|svg))`");
    /** What the worked example would make. */
    private static final List<String> MADE_BY_THE_EXAMPLE = List.of("diagrams/van.svg");

    @Test
    void theGuideNamesFilesThatAreThere() throws IOException {
        List<String> named = FILE.matcher(Files.readString(ROOT.resolve("docs/adding.md")))
                .results()
                .map((MatchResult found) -> found.group(1))
                .filter(name -> !MADE_BY_THE_EXAMPLE.contains(name))
                .toList();
        assertThat(named).hasSizeGreaterThan(20);
        assertThat(named).allSatisfy(name -> assertThat(place(name)).exists());
    }

    private static Path place(String name) {
        return name.matches("(src|docs|diagrams|demo-data)/.*")
                ? ROOT.resolve(name)
                : ROOT.resolve("src/main/java/quarterlight").resolve(name);
    }
}
