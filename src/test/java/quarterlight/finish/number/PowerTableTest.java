package quarterlight.finish.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class PowerTableTest {
    @Test
    void itIsThePowerOfTheLanguageToOnePartInAHundredMillion() {
        for (double power : List.of(-.6, .5, 1.0)) {
            PowerTable table = new PowerTable(power);
            for (double x = 1e-140; x < 1e140; x *= 1.37) {
                assertThat(table.of(x) / Math.pow(x, power))
                        .as("%s to the %s", x, power)
                        .isCloseTo(1, within(1e-8));
            }
        }
    }
}
