package quarterlight.ui.gauge.panel;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import javax.swing.JPanel;
import quarterlight.page.panel.PanelProfile;
import quarterlight.page.panel.PanelProfileDrawing;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** The zone in hand seen from its edge, as wide as there is room. Event thread only. */
final class PanelPlot extends JPanel {
    private static final int EDGE = 12;
    private static final int MIN_WIDTH = 320;
    private static final int MAX_WIDTH = 900;

    private final transient UiContext parts;
    private transient Optional<PanelProfile> profile = Optional.empty();

    PanelPlot(UiContext parts) {
        this.parts = parts;
        setName("panel-plot");
        Look.named(this, parts.texts().get("panels.plot"));
    }

    void show(Optional<PanelProfile> fresh) {
        profile = fresh;
        getAccessibleContext()
                .setAccessibleDescription(
                        drawing(MIN_WIDTH).map(PanelProfileDrawing::words).orElse(""));
        setVisible(profile.isPresent());
        revalidate();
        repaint();
    }

    private Optional<PanelProfileDrawing> drawing(int widthPx) {
        return profile.map(shown -> new PanelProfileDrawing(
                shown,
                parts.settings().settings().unit(),
                Look.palette().drawing(),
                parts.measure(),
                Math.min(MAX_WIDTH, Math.max(MIN_WIDTH, widthPx - 2 * EDGE)),
                PanelProfileDrawing.Room.WINDOW));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getParent() == null ? MIN_WIDTH : getParent().getWidth();
        return new Dimension(
                MIN_WIDTH,
                (int) Math.ceil(drawing(width)
                                .map(PanelProfileDrawing::heightPx)
                                .orElse(0.0))
                        + 2 * EDGE);
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(Look.palette().sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.translate(EDGE, EDGE);
        drawing(getWidth()).ifPresent(shown -> shown.draw(g));
        g.dispose();
    }
}
