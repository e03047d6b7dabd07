package quarterlight.ui.kit.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import quarterlight.ui.kit.Settings;

/** How the window is seen: kept in the settings, and in force at once. */
class SightTest {
    @AfterEach
    void usual() {
        Look.install(Palette.LIGHT);
    }

    @Test
    void stepsOfTextAreBoundOnBothSides() {
        assertThat(Sight.stepped(96)).isEqualTo(100);
        assertThat(Sight.stepped(112)).isEqualTo(100);
        assertThat(Sight.stepped(113)).isEqualTo(125);
        assertThat(Sight.stepped(199)).isEqualTo(200);
        assertThat(Sight.stepped(400)).isEqualTo(200);
        assertThat(new Sight(false, false, 40, false).textPercent()).isEqualTo(100);
        assertThat(new Sight(false, false, 225, false).textPercent()).isEqualTo(200);
    }

    @Test
    void whatIsChosenIsKeptAndStepsStayWithinBounds() {
        Settings kept = Settings.NONE.withTextPercent(150).withContrast(true).withStill(true);
        assertThat(new Settings(Map.copyOf(kept.values())).sight()).isEqualTo(new Sight(false, true, 150, true));
        assertThat(Settings.NONE.sight()).isEqualTo(new Sight(false, false, 100, false));
    }

    @Test
    void theLookFollowsAtOnce() {
        Look.install(new Sight(true, true, 200, true));
        assertThat(Look.palette()).isEqualTo(Palette.DARK_CONTRAST);
        assertThat(UIManager.getFont("defaultFont").getSize()).isEqualTo(26);
        assertThat(Look.still()).isTrue();
        assertThat(UIManager.getInt("TextField.caretBlinkRate")).isZero();
        Look.install(new Sight(false, false, 100, false));
        assertThat(Look.palette()).isEqualTo(Palette.LIGHT);
        assertThat(UIManager.getFont("defaultFont").getSize()).isEqualTo(13);
        assertThat(Look.still()).isFalse();
        assertThat(UIManager.getInt("TextField.caretBlinkRate")).isPositive();
    }

    @Test
    void panesScrollOnlyWhileTextIsLarge() {
        assertThat(viewWidth(100)).isEqualTo(400);
        assertThat(viewWidth(200)).isEqualTo(1000);
    }

    private static int viewWidth(int percent) {
        Look.install(new Sight(false, false, percent, false));
        JScrollPane pane = Roomy.around(new JPanel(), 500, 300);
        pane.setSize(400, 900);
        pane.doLayout();
        pane.getViewport().doLayout();
        return pane.getViewport().getView().getWidth();
    }

    @Test
    void toolsThatFindNoRoomGoOnInAnotherRow() {
        WrapBar bar = new WrapBar();
        for (int i = 0; i < 3; i++) {
            JButton tool = new JButton();
            tool.setPreferredSize(new Dimension(100, 20));
            bar.add(tool);
        }
        bar.setSize(400, 100);
        bar.doLayout();
        assertThat(bar.getComponent(2).getY()).isEqualTo(bar.getComponent(0).getY());
        bar.setSize(250, 100);
        bar.doLayout();
        assertThat(bar.getComponent(1).getY()).isEqualTo(bar.getComponent(0).getY());
        assertThat(bar.getComponent(2).getY()).isGreaterThan(bar.getComponent(0).getY());
    }
}
