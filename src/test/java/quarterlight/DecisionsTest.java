package quarterlight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The index of decisions has every decision, with its status, and leads to what is there. */
class DecisionsTest {
    private static final Path FOLDER = Path.of(System.getProperty("quarterlight.basedir", "."), "docs/decisions");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)]+)\\)");
    private static final Pattern SUPERSEDED = Pattern.compile("(?i)superseded by\\W*(\\d{4})");

    private static List<String> rows() throws IOException {
        return Files.readAllLines(FOLDER.resolve("README.md")).stream()
                .filter(line -> line.matches("\\| \\d{4} \\|.*"))
                .toList();
    }

    @Test
    void everyDecisionStandsInTheIndexOnceInOrder() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<String> numbers = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.matches("\\d{4}-.*\\.md"))
                    .map(name -> name.substring(0, 4))
                    .sorted()
                    .toList();
            assertThat(rows().stream().map(row -> row.substring(2, 6)).toList()).isEqualTo(numbers);
        }
    }

    @Test
    void everyLinkOfTheIndexLeadsSomewhere() throws IOException {
        assertThat(rows().stream()
                        .flatMap(row -> LINK.matcher(row).results())
                        .map((MatchResult link) -> link.group(1))
                        .filter(target -> !Files.exists(FOLDER.resolve(target)))
                        .toList())
                .isEmpty();
    }

    @Test
    void theStatusIsThatOfTheDecision() throws IOException {
        for (String row : rows()) {
            String number = row.substring(2, 6);
            try (Stream<Path> files = Files.list(FOLDER)) {
                Path file = files.filter(path -> path.getFileName().toString().startsWith(number))
                        .findFirst()
                        .orElseThrow();
                String status = SUPERSEDED
                        .matcher(Files.readString(file))
                        .results()
                        .findFirst()
                        .map(by -> "superseded by " + by.group(1))
                        .orElse("holds");
                assertThat(row).contains("| " + status + " |");
            }
        }
    }

    /** Who reads the code of a package finds what was decided about it. */
    @Test
    void thePackageNamesTheDecisionsAboutIt() throws IOException {
        for (String row : rows()) {
            Path place = LINK.matcher(row)
                    .results()
                    .map(link -> FOLDER.resolve(link.group(1)).normalize())
                    .reduce((first, last) -> last)
                    .orElseThrow();
            Path folder = Files.isDirectory(place) ? place : place.getParent();
            if (folder.toString().replace('\\', '/').contains("src/main/java/")) {
                assertThat(folder.resolve("package-info.java")).content().contains(row.substring(2, 6));
            }
        }
    }
}
