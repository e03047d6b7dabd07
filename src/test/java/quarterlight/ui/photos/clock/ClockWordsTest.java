package quarterlight.ui.photos.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.edit.fact.ClockEdits;

class ClockWordsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

    @Test
    void aShiftIsWrittenInTheFormInWhichItIsTyped() throws Exception {
        for (long seconds : List.of(0L, 1L, -1L, 3600L, -3661L, 987_654_321L)) {
            Duration shift = Duration.ofSeconds(seconds);
            assertThat(ClockEdits.shift(ClockWords.shift(shift))).isEqualTo(shift);
        }
    }

    @Test
    void aBareTimeBelongsToTheDayOfThePhoto() {
        assertThat(ClockWords.shown(" 14:03:22 ", DAY)).contains(LocalDateTime.of(2026, 3, 14, 14, 3, 22));
        assertThat(ClockWords.shown("9:05", DAY)).contains(LocalDateTime.of(2026, 3, 14, 9, 5));
    }

    @Test
    void aDateMayStandBeforeTheTime() {
        assertThat(ClockWords.shown("2026-03-15 00:00:01", DAY)).contains(LocalDateTime.of(2026, 3, 15, 0, 0, 1));
    }

    @Test
    void whatIsNoTimeIsNone() {
        for (String text : List.of("", "soon", "25:00", "14:60:00", "2026-13-01 10:00", "14 03 22")) {
            assertThat(ClockWords.shown(text, DAY)).as(text).isEmpty();
        }
    }

    @Test
    void aClockYearsOffDoesNotPressTheOthersTogether() {
        long now = 1_770_000_000L;
        TimeAxis axis = TimeAxis.of(List.of(0L, now, now + 60, now + 3600, now + 7200), 700);
        assertThat(axis.x(0)).isZero();
        assertThat(axis.x(now + 7200) - axis.x(now)).isGreaterThan(20);
        assertThat(axis.ticks()).isNotEmpty().isSorted();
    }

    @ParameterizedTest
    @CsvSource({
        "1 hour, PT1H",
        "-1 hour, PT-1H",
        "minus 90 minutes, PT-90M",
        "an hour back, PT-1H",
        "+2 days 3 h, PT51H",
        "1 hour and 5 minutes, PT1H5M",
        "45 s, PT45S",
        "2h, PT2H",
    })
    void shiftsAreReadAsPeopleWriteThem(String typed, Duration shift) {
        assertThat(ClockWords.typedShift(typed)).contains(shift);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "one", "1", "1 fortnight", "1 hour or so", "hour", "01:00:00"})
    void whatIsNoShiftIsNone(String typed) {
        assertThat(ClockWords.typedShift(typed)).isEmpty();
    }

    @Test
    void aDateIsReadAsPeopleWriteIt() {
        LocalDate day = LocalDate.of(2026, 2, 28);
        assertThat(ClockWords.shown("14 June 2025 10:03", day)).contains(LocalDateTime.of(2025, 6, 14, 10, 3));
        assertThat(ClockWords.shown("June 14, 2025 10:03:05", day)).contains(LocalDateTime.of(2025, 6, 14, 10, 3, 5));
        assertThat(ClockWords.shown("June 2025 10:03", day)).isEmpty();
    }
}
