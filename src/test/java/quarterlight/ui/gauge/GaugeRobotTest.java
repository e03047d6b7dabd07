package quarterlight.ui.gauge;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.ui.DeskRobot;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeValue;

/** The Gauge station: values come one after the other, each with Enter; Enter alone goes on to the next zone. */
class GaugeRobotTest extends DeskRobot {
    @Test
    void valuesAreTypedZoneAfterZone() {
        withControl(KeyEvent.VK_2);
        window.textBox("gauge-entry").requireVisible();
        enter("");
        enter("5.2");
        enter("4,8");
        enter("n");
        enter("");
        enter("132 um");
        until("four readings are kept", () -> held().readings().size() == 4);
        var readings = held().readings().stream().map(Recorded::value).toList();
        assertThat(readings.get(0).zone()).isEqualTo(readings.get(2).zone());
        assertThat(readings.get(3).zone()).isNotEqualTo(readings.get(0).zone());
        assertThat(readings.get(2).value()).isInstanceOf(GaugeValue.NoMetal.class);
        assertThat(um(readings.stream().map(r -> r.value()).toList())).containsExactly(132, 122, 132);
    }

    private static List<Integer> um(List<GaugeValue> values) {
        return values.stream()
                .filter(GaugeValue.Measured.class::isInstance)
                .map(value -> (int)
                        Math.round(((GaugeValue.Measured) value).thickness().um()))
                .toList();
    }

    private void enter(String text) {
        if (!text.isEmpty()) {
            window.textBox("gauge-entry").enterText(text);
        }
        window.textBox("gauge-entry").pressAndReleaseKeys(KeyEvent.VK_ENTER);
    }
}
