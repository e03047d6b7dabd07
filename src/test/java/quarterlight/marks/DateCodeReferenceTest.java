package quarterlight.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Tire weeks by the text of 49 CFR 574.5, identity numbers by 49 CFR 565, casting codes by common practice; the worked examples
 * were computed by hand and by calendar, not by this program.
 */
class DateCodeReferenceTest {
    @ParameterizedTest(name = "tire {0} is {1} to {2}")
    @CsvSource({
        "0109, 2009-01-04, 2009-01-10",
        "1000, 2000-03-05, 2000-03-11",
        "2501, 2001-06-24, 2001-06-30",
        "0301, 2001-01-21, 2001-01-27",
        "5312, 2012-12-30, 2013-01-05",
        "DOT AB12 CDE 0109, 2009-01-04, 2009-01-10"
    })
    void fourDigitsAreOneWeek(String text, LocalDate from, LocalDate to) {
        assertThat(TireDate.read(text)).containsExactly(new DateCandidate(from, to, "tire-week"));
    }

    @Test
    void aWeekThatTheYearDoesNotHaveIsNone() {
        assertThat(TireDate.read("5309")).isEmpty();
        assertThat(TireDate.read("0009")).isEmpty();
    }

    @Test
    void yearsOfFiftyThreeWeeksAreThoseOfTheRegulationNotOfIso() {
        assertThat(IntStream.rangeClosed(1970, 2028)
                        .filter(year -> TireDate.week(year, 53).isPresent()))
                .containsExactly(1972, 1978, 1984, 1989, 1995, 2000, 2006, 2012, 2017, 2023, 2028);
    }

    @Test
    void threeDigitsAreAWeekOfThreeDecades() {
        assertThat(TireDate.read("317")).extracting(c -> c.from().getYear()).containsExactly(1977, 1987, 1997);
    }

    @ParameterizedTest(name = "{0}: sum {1}, check {2}")
    @CsvSource({
        "1M8GDM9AXKP042788, 351, X, true",
        "11111111111111111, 89, 1, true",
        "5GZCZ43D13S812715, 408, 1, true",
        "1M8GDM9A0KP042788, 351, X, false"
    })
    void theCheckDigitIsTheRemainderByEleven(String text, int sum, char expected, boolean valid) {
        VehicleNumber number = VehicleNumber.of(text).orElseThrow();
        assertThat(number.weightedSum()).isEqualTo(sum);
        assertThat(number.expectedCheck()).isEqualTo(expected);
        assertThat(number.checks()).isEqualTo(valid);
    }

    @ParameterizedTest(name = "place 10 {0}, place 7 {1}: {2}")
    @CsvSource({"L, 5, 1990", "L, D, 2020", "B, 1, 1981", "U, 5, ", "0, 5, "})
    void placeTenIsTheModelYearAndPlaceSevenItsCycle(String ten, String seven, Integer year) {
        String text = "1AAAAA" + seven + "A1" + ten + "A000000";
        List<DateCandidate> years = VehicleNumber.of(text).orElseThrow().modelYears();
        if (year == null) {
            assertThat(years).isEmpty();
        } else {
            assertThat(years).extracting(c -> c.to().getYear()).containsExactly(year);
        }
    }

    @Test
    void aNumberWithIOrOfAnotherLengthIsNone() {
        assertThat(VehicleNumber.of("1M8GDM9AXKPO42788")).isEmpty();
        assertThat(VehicleNumber.of("1M8GDM9AXKP04278")).isEmpty();
    }

    private static List<LocalDate> first(String pattern, String text) {
        return DateCode.read(DatePattern.named(pattern).orElseThrow(), text).stream()
                .map(DateCandidate::from)
                .toList();
    }

    @Test
    void aCastingCodeKeepsEveryDecade() {
        assertThat(first("year-letter-day", "6B10"))
                .contains(LocalDate.of(1966, 2, 10), LocalDate.of(1956, 2, 10))
                .allMatch(day -> day.getYear() % 10 == 6 && day.getMonthValue() == 2 && day.getDayOfMonth() == 10);
    }

    @Test
    void anAmbiguousCodeHasBothReadings() {
        assertThat(first("letter-day-two-digit-year", "A257")).containsExactly(LocalDate.of(1957, 1, 2));
        assertThat(first("letter-day-year", "A257")).contains(LocalDate.of(1967, 1, 25), LocalDate.of(1977, 1, 25));
    }

    @Test
    void theLetterLIsDecemberWithIAndNovemberWithoutIt() {
        assertThat(first("letter-day-year", "L105")).allMatch(day -> day.getMonthValue() == 12);
        assertThat(first("letter-day-year-skipping-i", "L105")).isNotEmpty().allMatch(day -> day.getMonthValue() == 11);
    }

    @Test
    void isoWeeksBeginOnMonday() {
        assertThat(first("year-week", "09W01")).contains(LocalDate.of(2008, 12, 29));
        assertThat(first("year-week", "06W53")).doesNotContain(LocalDate.of(2007, 1, 1));
    }

    @Test
    void everyPatternReadsItsOwnExample() {
        for (DatePattern pattern : DatePattern.KNOWN) {
            assertThat(DateCode.read(pattern, pattern.example()))
                    .as(pattern.name())
                    .isNotEmpty();
        }
    }
}
