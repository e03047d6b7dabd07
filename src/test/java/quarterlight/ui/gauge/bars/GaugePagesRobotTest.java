package quarterlight.ui.gauge.bars;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import quarterlight.ui.DeskRobot;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.SignKind;

/** The pages of the Gauge station beside the readings: what if, signs all round, and the gauge check, by keyboard. */
class GaugePagesRobotTest extends DeskRobot {
    private void tab(int key) {
        withControl(KeyEvent.VK_2);
        robot.waitForIdle();
        robot.pressKey(KeyEvent.VK_ALT);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_ALT);
        robot.waitForIdle();
    }

    private JTable table(String name) {
        return (JTable) robot.finder().findByName(name, true);
    }

    private void cell(String name, int row, int column) {
        JTable table = table(name);
        robot.focusAndWaitForFocusGain(table);
        GuiActionRunner.execute(() -> table.changeSelection(row, column, false, false));
        robot.waitForIdle();
    }

    private AbstractButton button(String name) {
        return (AbstractButton) robot.finder().findByName(name);
    }

    private List<Sign> signs() {
        return held().signs().stream().map(Recorded::value).toList();
    }

    @Test
    void signsAreNotedAllRoundExceptOne() {
        tab(KeyEvent.VK_4);
        cell("sign-grid", 0, 1);
        robot.pressAndReleaseKeys(KeyEvent.VK_S);
        until("the first is noted", () -> signs().size() == 1);
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_N);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        int panels = table("sign-grid").getRowCount();
        until("all panels are noted", () -> signs().size() == panels);
        assertThat(signs()).allMatch(sign -> sign.kind() == SignKind.OVERSPRAY);
        assertThat(signs().stream().filter(Sign::seen)).hasSize(1);
        cell("sign-grid", 1, 1);
        robot.pressAndReleaseKeys(KeyEvent.VK_DELETE);
        until("one is taken back", () -> signs().size() == panels - 1);
    }

    @Test
    void whatIsSupposedMovesTheLikelihoodAndIsKeptOnlyWhenSaid() {
        tab(KeyEvent.VK_1);
        window.textBox("gauge-entry").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        window.textBox("gauge-entry").enterText("5.1").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("a reading is kept", () -> held().readings().size() == 1);
        tab(KeyEvent.VK_3);
        until(
                "the zone can be judged",
                () -> window.textBox("what-if-reading").target().isEnabled());
        window.textBox("what-if-reading").enterText("22").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        window.comboBox("what-if-sign").selectItem("overspray");
        robot.click(button("what-if-seen"));
        ChanceBars bars = robot.finder().findByType(ChanceBars.class);
        until("the likelihood moved", () -> GuiActionRunner.execute(bars::words).contains("\u2192"));
        assertThat(held().readings()).hasSize(1);
        assertThat(signs()).isEmpty();
        robot.click(button("what-if-keep"));
        until("both are kept", () -> held().readings().size() == 2 && signs().size() == 1);
        assertThat(signs().get(0).seen()).isTrue();
        withControl(KeyEvent.VK_Z);
        until("one undo takes both back", () -> held().readings().size() == 1 && signs().isEmpty());
    }

    @Test
    void panelsAreSetAgainstOneAnother() {
        tab(KeyEvent.VK_1);
        for (String value : List.of("", "5.1", "5.4", "", "9.0", "9.4")) {
            if (!value.isEmpty()) {
                window.textBox("gauge-entry").enterText(value);
            }
            window.textBox("gauge-entry").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        }
        until("the readings are kept", () -> held().readings().size() == 4);
        tab(KeyEvent.VK_2);
        until(
                "each of two panels stands against the other",
                () -> GuiActionRunner.execute(() -> robot.finder().findAll(c -> c instanceof DifferenceBars).stream()
                        .map(c -> c.getAccessibleContext().getAccessibleDescription())
                        .anyMatch(words -> words.contains("+4.0") || words.contains("+3.9"))));
    }

    @Test
    void theGaugeCheckIsTypedIntoTheTable() {
        tab(KeyEvent.VK_5);
        window.textBox("check.percent").deleteText().enterText("3");
        window.textBox("check.um").deleteText().enterText("3").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        cell("gauge-checks", 0, 2);
        type("0,1");
        until("bare metal is kept", () -> checks().size() == 1);
        window.textBox("check.nominal").enterText("20").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        cell("gauge-checks", 1, 2);
        type("20.3");
        until("the shim is kept", () -> checks().size() == 2);
        cell("gauge-checks", 1, 4);
        type("25");
        until("after is kept", () -> checks().size() == 3);
        assertThat(checks())
                .allMatch(check -> check.gaugeToleranceUm().orElse(0) == 3
                        && check.gaugeTolerancePercent().orElse(0) == 3);
        assertThat(checks().get(0).on()).isEqualTo(GaugeSurface.BARE);
        assertThat(checks().get(2).when()).isEqualTo(GaugeMoment.AFTER);
        until("the failure is said", () -> window.label("check.verdict").text().contains("failed"));
        window.checkBox("check.correct").check();
        until("the correction is chosen", () -> held().facts().choices().gaugeCorrection());
    }

    private List<GaugeCheck> checks() {
        return held().gaugeChecks().stream().map(Recorded::value).toList();
    }

    private void type(String text) {
        robot.enterText(text);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        robot.waitForIdle();
    }
}
