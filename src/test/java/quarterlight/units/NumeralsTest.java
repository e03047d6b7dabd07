package quarterlight.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;

class NumeralsTest {
    @Test
    void aNegativeNumberHasATrueMinus() {
        assertThat(Numerals.fixed(-3.14, 1)).isEqualTo("\u22123.1");
        assertThat(Numerals.trueMinus("-0.50")).isEqualTo("\u22120.50");
    }

    @Test
    void whatRoundsToZeroHasNoMinus() {
        assertThat(Numerals.fixed(-0.04, 1)).isEqualTo("0.0");
        assertThat(Numerals.fixed(-0.06, 1)).isEqualTo("\u22120.1");
    }

    @Test
    void oneIsSingular() {
        assertThat(Numerals.count(1, "photo", "photos")).isEqualTo("1 photo");
        assertThat(Numerals.count(0, "photo", "photos")).isEqualTo("0 photos");
        assertThat(Numerals.count(2, "photo", "photos")).isEqualTo("2 photos");
    }

    @Test
    void aDateIsWrittenAsPeopleInAmericaReadIt() {
        assertThat(Days.day(LocalDate.of(2026, 4, 8))).isEqualTo("Apr 8, 2026");
        assertThat(Days.day(LocalDateTime.of(2026, 12, 31, 23, 59))).isEqualTo("Dec 31, 2026");
        assertThat(Days.month(LocalDate.of(1971, 3, 1))).isEqualTo("Mar 1971");
    }
}
