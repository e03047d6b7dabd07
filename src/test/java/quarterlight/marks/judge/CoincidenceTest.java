package quarterlight.marks.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.marks.MarkTeller;
import quarterlight.marks.code.DateCandidate;
import quarterlight.visit.mark.MarkKind;

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

    /** Worked out by hand for March 1971: of 480 windows a month apart, those that some year of the text lies in or up to 180 days before. */
    @ParameterizedTest(name = "a {0} that says {1} is {2}, by chance in {3} to {4} of 100")
    @CsvSource({
        "CASTING, 1B18, FITS, 5, 8",
        "CASTING, 9B18, UNUSUALLY_EARLY, -1, -1",
        "TAG, MADE 1B18, FITS, 5, 8",
        "TAG, MADE 1971-02-18, FITS, 0, 2",
        "STAMP, 0218B, FITS, 50, 65",
        "STAMP, 0418B, TOO_LATE, -1, -1",
        "LABEL, 03/71, FITS, 0, 2",
        "LABEL, 05/71, TOO_LATE, -1, -1",
        "TIRE, DOT ABCD EFG 051, FITS, 2, 4",
        "TIRE, DOT ABCD EFG 055, TOO_LATE, -1, -1"
    })
    void besideEveryKindOfDateThatFitsAndBesideNoOtherItIsSaid(
            MarkKind kind, String text, Verdict verdict, int least, int most) {
        JudgedMark mark =
                MarkTeller.built("1971-03").mark("Starter", kind, text).first();
        assertThat(mark.verdict()).isEqualTo(verdict);
        List<String> said = mark.decoded().stream()
                .filter(one -> one.startsWith("By chance alone"))
                .toList();
        if (verdict != Verdict.FITS) {
            assertThat(said).isEmpty();
            return;
        }
        assertThat(said).hasSize(1);
        Matcher number = Pattern.compile("would fit (under 1|\\d+) of 100").matcher(said.get(0));
        assertThat(number.find()).as(said.get(0)).isTrue();
        int ofHundred = number.group(1).equals("under 1") ? 0 : Integer.parseInt(number.group(1));
        assertThat(ofHundred).isBetween(least, most);
    }
}
