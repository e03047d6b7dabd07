package quarterlight.ui.photos.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
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
}
