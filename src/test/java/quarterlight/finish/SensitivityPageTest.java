package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quarterlight.finish.number.JudgedNumber;

/** The sensitivity page, which {@code SensitivityStudy} writes, speaks of the judged numbers that the program has, in the order of their weight. */
class SensitivityPageTest {
    private static List<List<String>> rows() throws IOException {
        Path page = Path.of(System.getProperty("quarterlight.basedir", "."), "docs/methods/finish-sensitivity.md");
        List<String> words =
                Stream.of(JudgedNumber.values()).map(JudgedNumber::word).toList();
        return Files.readAllLines(page).stream()
                .filter(line -> line.startsWith("| "))
                .map(line -> List.of(line.substring(2, line.length() - 2).split(" \\| ", -1)))
                .filter(cells -> words.contains(cells.get(0)))
                .toList();
    }

    private static double figure(List<String> row, int cell) {
        return Double.parseDouble(row.get(cell));
    }

    @Test
    void everyJudgedNumberStandsOnItOnceTheHeaviestFirst() throws IOException {
        List<List<String>> rows = rows();
        assertThat(rows.stream().map(row -> row.get(0)))
                .containsExactlyInAnyOrderElementsOf(
                        Stream.of(JudgedNumber.values()).map(JudgedNumber::word).toList());
        double last = 100;
        double first = 0;
        for (List<String> row : rows) {
            assertThat(figure(row, 1)).as(row.get(0)).isBetween(0.0, last);
            assertThat(figure(row, 3)).as("at most").isBetween(figure(row, 2), 100.0);
            last = figure(row, 1);
            first += figure(row, 4);
        }
        assertThat(first).as("some number moves each panel most").isBetween(99.0, 101.0);
    }
}
