package quarterlight.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MeasureLimitTest {
    private static Optional<BigDecimal> of(String value) {
        return Optional.of(value).filter(text -> !text.isEmpty()).map(BigDecimal::new);
    }

    private static boolean kept(String least, String most, String value) {
        return new MeasureLimit(of(least), of(most), "common practice").isKept(new BigDecimal(value));
    }

    @Test
    void theLimitItselfIsKeptAndALastDigitBeyondIsNot() {
        assertThat(kept("1.6", "", "1.6")).isTrue();
        assertThat(kept("1.6", "", "1.60")).isTrue();
        assertThat(kept("1.6", "", "1.5")).isFalse();
        assertThat(kept("1.6", "", "900")).isTrue();
        assertThat(kept("", "30", "30")).isTrue();
        assertThat(kept("", "30", "31")).isFalse();
        assertThat(kept("", "30", "-5")).isTrue();
        assertThat(kept("12", "14.8", "13")).isTrue();
        assertThat(kept("12", "14.8", "11.9")).isFalse();
        assertThat(kept("12", "14.8", "14.9")).isFalse();
    }

    @Test
    void aLimitHasAnEndInOrderAndASource() {
        assertThatIllegalArgumentException().isThrownBy(() -> kept("", "", "1"));
        assertThatIllegalArgumentException().isThrownBy(() -> kept("2", "1.9", "1"));
        assertThat(kept("2", "2", "2")).isTrue();
        assertThatIllegalArgumentException().isThrownBy(() -> new MeasureLimit(of("1"), Optional.empty(), " "));
    }
}
