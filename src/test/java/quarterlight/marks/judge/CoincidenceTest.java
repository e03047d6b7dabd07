package quarterlight.marks.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.marks.code.DateCandidate;

/** A code whose year is one digit means ten years of a century alike, so it fits by chance; a whole year does so seldom. */
class CoincidenceTest {
    private static final WindowRule MARCH_1971 =
            new WindowRule(new BuildWindow(LocalDate.of(1971, 3, 1), LocalDate.of(1971, 3, 31)), 180, 0);

    private static DateCandidate january(int year) {
        return new DateCandidate(LocalDate.of(year, 1, 1), LocalDate.of(year, 1, 31), "month and year");
    }

    @Test
    void aYearOfOneDigitFitsByChanceIn6Or7Of100() {
        List<DateCandidate> decades = new ArrayList<>();
        for (int year = 1921; year <= 2031; year += 10) {
            decades.add(january(year));
        }
        assertThat(MARCH_1971.coincidence(decades)).isBetween(0.055, 0.075);
    }

    @Test
    void aWholeYearFitsByChanceInUnder2Of100() {
        assertThat(MARCH_1971.coincidence(List.of(january(1971)))).isBetween(0.005, 0.02);
        assertThat(MARCH_1971.coincidence(List.of(january(1935)))).isZero();
    }
}
