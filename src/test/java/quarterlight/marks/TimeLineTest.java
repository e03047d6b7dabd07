package quarterlight.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.visit.mark.MarkKind;

/** The dates of a car on one line: half a year round the build at least, three years at most, a margin of three months. */
class TimeLineTest {
    private static TimeLine line(MarkTeller car) {
        return TimeLine.of(car.report()).orElseThrow();
    }

    /** Built in March 1971: from September 1970 to September 1971, and three months more on either side. */
    @Test
    void aboutTheBuildItReachesHalfAYearAndTheMargin() {
        TimeLine line = line(MarkTeller.built("1971-03").mark("Block", MarkKind.CASTING, "1971-02-10"));
        assertThat(line.first()).isEqualTo(LocalDate.of(1970, 6, 1));
        assertThat(line.last()).isEqualTo(LocalDate.of(1971, 12, 31));
        assertThat(line.rows()).singleElement().satisfies(row -> {
            assertThat(row.part()).isEqualTo("Block");
            assertThat(row.stage()).isEqualTo("casting");
            assertThat(row.others()).isZero();
            assertThat(row.contradicted()).isFalse();
        });
    }

    /** Three years from the window count, a day more does not. */
    @ParameterizedTest
    @CsvSource({"1968-03-01, 1967-12-01", "1968-02-29, 1970-06-01"})
    void aDateWithinThreeYearsWidensTheLineOneBeyondDoesNot(String date, LocalDate first) {
        assertThat(line(MarkTeller.built("1971-03").mark("Block", MarkKind.CASTING, date))
                        .first())
                .isEqualTo(first);
    }

    @ParameterizedTest
    @CsvSource({"1974-03-31, 1974-06-30", "1974-04-01, 1971-12-31"})
    void theSameAfterTheBuild(String date, LocalDate last) {
        assertThat(line(MarkTeller.built("1971-03").mark("Block", MarkKind.CASTING, date))
                        .last())
                .isEqualTo(last);
    }

    @Test
    void rowsStandInTheOrderOfTheirDatesEachStampOnceAndNumbersApart() {
        TimeLine line = line(MarkTeller.built("1971-03")
                .mark("Carburetor", MarkKind.CASTING, "1971-02-20")
                .mark("Block", MarkKind.CASTING, "1971-01-10")
                .mark("Block", MarkKind.CASTING, "1971-01-10")
                .mark("Tag", MarkKind.TAG, "XQZ-99817-RR"));
        assertThat(line.rows()).extracting(TimeLine.Row::part).containsExactly("Block", "Carburetor");
        assertThat(line.undated()).singleElement().asString().startsWith("Tag: ");
        assertThat(TimeLine.of(MarkTeller.built("1971-03")
                        .mark("Tag", MarkKind.TAG, "XQZ-99817-RR")
                        .report()))
                .isEmpty();
    }

    /** C15 of a year ending in 1 is March 15 of 1971, and of the other decades. */
    @Test
    void ofManyDecadesThoseNearTheBuildAreShownAndTheOthersCounted() {
        TimeLine.Row row = line(MarkTeller.built("1971-03").mark("Block", MarkKind.CASTING, "1C15"))
                .rows()
                .get(0);
        assertThat(row.shown().get(0).from()).isEqualTo(LocalDate.of(1971, 3, 15));
        assertThat(row.shown()).allMatch(date -> date.meets(LocalDate.of(1968, 3, 1), LocalDate.of(1974, 3, 31)));
        assertThat(row.others()).isPositive();
    }

    @Test
    void aDateThatDoesNotFitIsMarkedAsContradicted() {
        TimeLine line = line(MarkTeller.built("1971-03")
                .mark("Block", MarkKind.CASTING, "1971-02-10")
                .mark("Head", MarkKind.CASTING, "1971-08-10"));
        assertThat(line.rows()).extracting(TimeLine.Row::contradicted).containsExactly(false, true);
    }

    @Test
    void withoutABuildTheLineLiesRoundTheMiddleDate() {
        TimeLine line = line(MarkTeller.undated()
                .mark("Block", MarkKind.CASTING, "1971-02-10")
                .mark("Head", MarkKind.CASTING, "1971-03-10"));
        assertThat(line.window()).isEmpty();
        assertThat(line.first()).isEqualTo(LocalDate.of(1970, 6, 1));
        assertThat(line.last()).isEqualTo(LocalDate.of(1971, 12, 31));
    }

    @Test
    void aLineRunsForwardAndARowShowsADate() {
        LocalDate day = LocalDate.of(1971, 3, 1);
        assertThat(new TimeLine(day, day, Optional.empty(), List.of(), List.of()).last())
                .isEqualTo(day);
        assertThatThrownBy(() -> new TimeLine(day, day.minusDays(1), Optional.empty(), List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        TimeLine.Row row = line(MarkTeller.built("1971-03").mark("Block", MarkKind.CASTING, "1971-02-10"))
                .rows()
                .get(0);
        assertThatThrownBy(
                        () -> new TimeLine.Row(row.part(), row.text(), row.stage(), List.of(), 0, row.verdict(), false))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
