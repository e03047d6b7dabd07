package quarterlight.marks.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.table.list.DatePatternTable;

/**
 * Tire weeks by the text of 49 CFR 574.5, identity numbers by 49 CFR 565, casting codes by common practice; the worked examples
 * were computed by hand and by calendar, not by this program.
 */
class DateCodeReferenceTest {
    private static final DatePatterns PATTERNS = DatePatternTable.load();

    private static List<DateCandidate> dates(List<Completion> completions) {
        return completions.stream().flatMap(c -> c.candidates().stream()).toList();
    }

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
        assertThat(dates(TireDate.read(text))).containsExactly(new DateCandidate(from, to, "tire-week"));
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
        assertThat(dates(TireDate.read("317")))
                .extracting(c -> c.from().getYear())
                .containsExactly(1977, 1987, 1997);
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
        return dates(new DatePatterns(List.of(PATTERNS.named(pattern).orElseThrow())).read(text)).stream()
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
        for (DatePattern pattern : PATTERNS.all()) {
            DatePatterns alone = new DatePatterns(List.of(pattern));
            assertThat(pattern.bearsYear() ? alone.read(pattern.example()) : alone.readWithoutYear(pattern.example()))
                    .as(pattern.name())
                    .isNotEmpty();
        }
    }

    @ParameterizedTest(name = "{0} is week {2} of {1} by ISO 8601")
    @CsvSource({
        "2005-01-01, 04, 53",
        "2006-01-01, 05, 52",
        "2007-01-01, 07, 01",
        "2008-12-29, 09, 01",
        "2010-01-03, 09, 53",
        "2019-12-30, 20, 01",
        "2006-12-31, 06, 52"
    })
    void publishedDaysLieInTheirIsoWeek(LocalDate day, String year, String week) {
        assertThat(dates(new DatePatterns(List.of(PATTERNS.named("year-week").orElseThrow())).read(year + "W" + week)))
                .anyMatch(date -> date.meets(day, day));
    }

    @Test
    void isoYearsOfFiftyThreeWeeksAreOthersThanThoseOfTires() {
        DatePatterns weeks =
                new DatePatterns(List.of(PATTERNS.named("week-year").orElseThrow()));
        assertThat(IntStream.rangeClosed(1970, 2019).filter(year -> !weeks.read("53 %02d".formatted(year % 100))
                        .isEmpty()))
                .containsExactly(1970, 1976, 1981, 1987, 1992, 1998, 2004, 2009, 2015);
    }

    @Test
    void withAllPatternsEveryReadingOfAnAmbiguousCodeIsKept() {
        assertThat(PATTERNS.read("A257").get(0).candidates())
                .extracting(DateCandidate::from)
                .contains(LocalDate.of(1957, 1, 2))
                .contains(LocalDate.of(1957, 1, 25), LocalDate.of(1967, 1, 25))
                .contains(LocalDate.of(1977, 1, 25), LocalDate.of(1987, 1, 25));
        assertThat(PATTERNS.read("L105").get(0).candidates())
                .extracting(date -> date.from().getMonthValue())
                .contains(11, 12);
    }

    @Test
    void theLetterMIsDecemberOnlyWithoutI() {
        assertThat(first("letter-day-year", "M105")).isEmpty();
        assertThat(first("letter-day-year-skipping-i", "M105")).isNotEmpty().allMatch(day -> day.getMonthValue() == 12);
    }

    @ParameterizedTest(name = "{0} by {1} is {2} to {3}")
    @CsvSource({
        "9K21, year-letter-day, 1969-10-21, 1969-10-21",
        "9K21, year-letter-day-with-i, 1969-11-21, 1969-11-21",
        "12-4-71, day-month-year, 1971-04-12, 1971-04-12",
        "12-4-71, month-day-year, 1971-12-04, 1971-12-04",
        "71Q2, year-quarter, 1971-04-01, 1971-06-30",
        "71-2, year-quarter-plain, 1971-04-01, 1971-06-30",
        "71049, year-day-of-year, 1971-02-18, 1971-02-18",
        "June 1970, month-name-year, 1970-06-01, 1970-06-30",
        "6/70, month-year, 1970-06-01, 1970-06-30",
        "15 71, week-year, 1971-04-12, 1971-04-18",
        "6 b 10, year-letter-day, 1966-02-10, 1966-02-10"
    })
    void shapesOfCodes(String text, String pattern, LocalDate from, LocalDate to) {
        assertThat(PATTERNS.read(text).get(0).candidates()).contains(new DateCandidate(from, to, pattern));
    }

    @Test
    void anUnreadLetterIsWhateverCanStandThere() {
        List<Completion> read =
                new DatePatterns(List.of(PATTERNS.named("year-letter-day").orElseThrow())).read("1?31");
        assertThat(read)
                .extracting(Completion::text)
                .containsExactly("1A31", "1C31", "1E31", "1G31", "1H31", "1K31", "1M31");
    }

    @Test
    void unreadDigitsOfATireLeaveTheWeeksThatThereAre() {
        assertThat(TireDate.read("DOT AB12 CDE 5?12"))
                .extracting(Completion::text)
                .containsExactly("5012", "5112", "5212", "5312");
        assertThat(TireDate.read("DOT AB1? CDE 0109")).hasSize(1);
    }

    @Test
    void productsOfThePlacesAddUpAsPublished() {
        int[] products = {8, 28, 48, 35, 16, 12, 18, 10, 0, 18, 56, 0, 24, 10, 28, 24, 16};
        assertThat(VehicleNumber.of("1M8GDM9AXKP042788").orElseThrow().weightedSum())
                .isEqualTo(IntStream.of(products).sum());
    }

    @Test
    void theCheckDigitNarrowsAnUnreadCharacter() {
        assertThat(VehicleNumber.completions("1M8GDM9AXKP04278?"))
                .extracting(VehicleNumber::text)
                .contains("1M8GDM9AXKP042788")
                .allMatch(text -> VehicleNumber.of(text).orElseThrow().checks())
                .doesNotContain("1M8GDM9AXKP042787");
    }
}
