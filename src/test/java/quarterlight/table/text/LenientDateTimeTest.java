package quarterlight.table.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.table.text.LenientDateTime.Order;

/** The second of May, quarter past ten, as it is written in several countries. */
class LenientDateTimeTest {
    private static final Optional<LocalDate> DAY = Optional.of(LocalDate.of(2026, 5, 2));

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-05-02T10:15:30 | YEAR_FIRST",
                "2026-05-02 10:15:30 | MONTH_FIRST",
                "2026/05/02 10:15:30 | DAY_FIRST",
                "02.05.2026 10:15:30 | DAY_FIRST",
                "2.5.26 10:15:30 | DAY_FIRST",
                "02/05/2026 10.15.30 | DAY_FIRST",
                "5/2/2026 10:15:30 AM | MONTH_FIRST",
                "5/2/2026, 10:15:30 a.m. | MONTH_FIRST",
                "10:15:30 | MONTH_FIRST"
            })
    void aMomentIsReadInTheOrderSaid(String text, Order order) {
        assertThat(LenientDateTime.parse(text, order, DAY, ZoneOffset.UTC))
                .contains(LocalDateTime.of(2026, 5, 2, 10, 15, 30));
    }

    @Test
    void theTwelveHourClockTurnsAtNoonAndMidnight() {
        assertThat(hour("12:15 AM")).isEqualTo(0);
        assertThat(hour("12:15 PM")).isEqualTo(12);
        assertThat(hour("1:15 pm")).isEqualTo(13);
        assertThat(LenientDateTime.parse("13:15 PM", Order.MONTH_FIRST, DAY, ZoneOffset.UTC))
                .isEmpty();
    }

    private static int hour(String text) {
        return LenientDateTime.parse(text, Order.MONTH_FIRST, DAY, ZoneOffset.UTC)
                .orElseThrow()
                .getHour();
    }

    @Test
    void theOrderIsTheOneThatAllDatesAllow() {
        assertThat(LenientDateTime.orderOf(List.of("05/02/2026", "05/13/2026"))).isEqualTo(Order.MONTH_FIRST);
        assertThat(LenientDateTime.orderOf(List.of("05/02/2026", "13/05/2026"))).isEqualTo(Order.DAY_FIRST);
        assertThat(LenientDateTime.orderOf(List.of("05.02.2026 10:15"))).isEqualTo(Order.DAY_FIRST);
        assertThat(LenientDateTime.orderOf(List.of("05/02/2026"))).isEqualTo(Order.MONTH_FIRST);
        assertThat(LenientDateTime.orderOf(List.of("2026-05-02"))).isEqualTo(Order.YEAR_FIRST);
    }

    @ParameterizedTest
    @CsvSource({"31.02.2026 10:15", "hood", "25:00", "10", "2026-13-01 10:00"})
    void whatIsNoMomentIsNone(String text) {
        assertThat(LenientDateTime.parse(text, Order.DAY_FIRST, DAY, ZoneOffset.UTC))
                .isEmpty();
    }

    @Test
    void aBareTimeNeedsADay() {
        assertThat(LenientDateTime.parse("10:15", Order.DAY_FIRST, Optional.empty(), ZoneOffset.UTC))
                .isEmpty();
    }
}
