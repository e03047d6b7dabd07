package quarterlight.ui;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Graphics;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.Station;

/** The narrow rail at the left with the stations of the job. Event thread only. */
final class Rail extends JPanel {
    private static final int BAR_PX = 4;

    private final Map<Station, JToggleButton> buttons = new EnumMap<>(Station.class);

    Rail(Texts texts, Consumer<Station> chosen) {
        super(new MigLayout("insets 8 4 8 4, flowy, gap 4", "[72!]"));
        setBorder(new Hairline(Hairline.Side.RIGHT));
        ButtonGroup group = new ButtonGroup();
        for (Station station : Station.values()) {
            String name = texts.get(station.textKey());
            JToggleButton button = new JToggleButton(name, Station.sign(station));
            button.setVerticalTextPosition(SwingConstants.BOTTOM);
            button.setHorizontalTextPosition(SwingConstants.CENTER);
            button.putClientProperty("JButton.buttonType", "toolBarButton");
            button.setToolTipText(texts.get("rail.tip", name, station.digit()));
            button.setName("station-" + station.digit());
            Look.named(button, name);
            button.addActionListener(e -> chosen.accept(station));
            group.add(button);
            buttons.put(station, button);
            add(button, "growx, h 60!");
        }
    }

    /** A bar of the accent stands beside the station in front. */
    @Override
    protected void paintChildren(Graphics g) {
        super.paintChildren(g);
        buttons.values().stream().filter(JToggleButton::isSelected).forEach(button -> {
            g.setColor(Look.palette().accent());
            g.fillRect(0, button.getY(), UIScale.scale(BAR_PX), button.getHeight());
        });
    }

    void show(Station station) {
        buttons.get(station).setSelected(true);
        repaint();
    }
}
