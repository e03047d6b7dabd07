package quarterlight.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.marks.Contradiction;
import quarterlight.marks.MarksReport;
import quarterlight.marks.TimeLine;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.Verdict;
import quarterlight.table.list.DatePatternTable;

/** The contradictions planted in the demo are all found, and none is invented. */
class DemoDatesTest {
    private static final Path DATA =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("demo-data");

    private static MarksReport report(String visit) throws Exception {
        return MarksReport.of(DemoStoryTest.visit(visit), DatePatternTable.load());
    }

    private static Map<String, String> contradictions(String visit) throws Exception {
        Map<String, String> found = new TreeMap<>();
        for (Contradiction contradiction : report(visit).contradictions()) {
            found.put(contradiction.what(), contradiction.kind().word());
        }
        assertThat(found).hasSameSizeAs(report(visit).contradictions());
        return found;
    }

    @Test
    void theGreenCarsThreeAreFoundAndNoOther() throws Exception {
        assertThat(contradictions("tamarisk-1971"))
                .isEqualTo(Map.of(
                        "Alternator", "date",
                        "Rear axle", "date",
                        "Side reflector in a recess of the quarter, left", "feature"));
    }

    @Test
    void theBlueCarsOneIsFoundAndNoOther() throws Exception {
        assertThat(contradictions("chicory-1971")).isEqualTo(Map.of("Cylinder head, right", "date"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarisk-1971", "chicory-1971"})
    void everyMarkIsJudgedAsPlantedAndItsTrueDateIsAmongItsCandidates(String visit) throws Exception {
        List<JudgedMark> marks = report(visit).marks();
        List<CSVRecord> truth = new ArrayList<>();
        Story.rows(DATA.resolve(visit).resolve("truth/dates.csv"), ',').forEach(truth::add);
        assertThat(marks).hasSameSizeAs(truth);
        for (int i = 0; i < truth.size(); i++) {
            JudgedMark mark = marks.get(i);
            CSVRecord row = truth.get(i);
            assertThat(mark.mark().part()).isEqualTo(row.get("part"));
            assertThat(mark.verdict().word()).as(row.get("part")).isEqualTo(row.get("verdict"));
            String day = row.get("truth");
            boolean dated = mark.verdict() != Verdict.NOT_APPLICABLE && mark.verdict() != Verdict.CANNOT_TELL;
            if (dated) {
                LocalDate from = LocalDate.parse(day.length() == 10 ? day : day + "-01");
                LocalDate to = day.length() == 10 ? from : from.plusMonths(1).minusDays(1);
                assertThat(mark.candidates()).as(row.get("part")).anyMatch(date -> date.meets(from, to));
            }
        }
    }

    @Test
    void theLetterUnderRustIsReadFromTheOtherView() throws Exception {
        JudgedMark stamp = report("tamarisk-1971").marks().get(1);
        assertThat(stamp.mark().text()).isEqualTo("H71C2A1?447");
        assertThat(stamp.text()).isEqualTo("H71C2A10447");
        assertThat(stamp.witnesses()).isEqualTo(2);
        assertThat(stamp.matches()).allMatch(match -> match.differing().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarisk-1971", "chicory-1971"})
    void theTimeLineHoldsEveryDatedStampOnce(String visit) throws Exception {
        MarksReport report = report(visit);
        TimeLine line = TimeLine.of(report).orElseThrow();
        long dated = report.marks().stream()
                .filter(mark -> !mark.candidates().isEmpty())
                .count();
        assertThat(line.rows())
                .hasSize((int) dated)
                .isSortedAccordingTo((a, b) ->
                        a.shown().get(0).from().compareTo(b.shown().get(0).from()));
        assertThat(line.first()).isBefore(report.window().orElseThrow().first());
        assertThat(line.last()).isAfter(report.window().orElseThrow().last());
        assertThat(line.rows().stream().filter(TimeLine.Row::contradicted).map(TimeLine.Row::part))
                .containsExactlyInAnyOrderElementsOf(report.contradictions().stream()
                        .filter(c -> !c.rows().isEmpty())
                        .map(Contradiction::what)
                        .toList());
    }
}
