package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.finish.number.ProcessModel;
import quarterlight.finish.number.SignRates;
import quarterlight.finish.number.StoryNumber;

/** The method page prints the numbers that the program uses, each with its source or its mark as judgement. */
class NumbersPageTest {
    private static final Path PAGE =
            Path.of(System.getProperty("quarterlight.basedir", "."), "docs/methods/finish-history.md");

    private static List<List<String>> rows() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (String line : Files.readAllLines(PAGE)) {
            if (line.startsWith("| ")) {
                rows.add(List.of(line.substring(2, line.length() - 2).split(" \\| ", -1)));
            }
        }
        return rows;
    }

    private static String number(double value) {
        return value == Math.rint(value)
                ? Long.toString((long) value)
                : Double.toString(value).replaceFirst("^(-?)0\\.", "$1.");
    }

    @Test
    void everyNumberStandsOnThePage() throws IOException {
        List<List<String>> rows = rows();
        for (JudgedNumber judged : JudgedNumber.values()) {
            assertThat(rows)
                    .contains(List.of(
                            judged.word(),
                            number(judged.low()),
                            number(judged.high()),
                            judged.meaning(),
                            judged.source()));
            assertThat(judged.source()).contains("judgement");
        }
        for (FixedNumber fixed : FixedNumber.values()) {
            assertThat(rows).contains(List.of(fixed.word(), number(fixed.value()), fixed.meaning()));
        }
        for (StoryNumber story : StoryNumber.values()) {
            assertThat(rows).contains(List.of(story.word(), number(story.value()), story.meaning()));
        }
        for (SignRates.Row sign : SignRates.rows()) {
            List<String> cells = new ArrayList<>(List.of(sign.sign().word()));
            sign.rates().forEach(rate -> cells.add(number(rate)));
            assertThat(rows).contains(cells);
        }
        for (ProcessModel view : ProcessModel.values()) {
            assertThat(rows)
                    .anyMatch(
                            row -> row.get(0).equals(view.word()) && row.get(1).equals(view.words()));
        }
    }
}
