package quarterlight.ui.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;

class FormatTest {
    @Test
    void milHasOneDecimalAndUmNone() {
        Thickness t = new Thickness(127);
        assertThat(Format.thicknessWithUnit(t, ThicknessUnit.MIL)).isEqualTo("5.0\u2009mil");
        assertThat(Format.thicknessWithUnit(t, ThicknessUnit.UM)).isEqualTo("127\u2009\u00b5m");
    }

    @Test
    void minusIsATrueMinusAndZeroHasNone() {
        assertThat(Format.number(-1.25, 1)).startsWith("\u22121.");
        assertThat(Format.number(-0.04, 1)).isEqualTo("0.0");
    }
}
