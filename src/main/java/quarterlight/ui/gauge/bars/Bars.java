package quarterlight.ui.gauge.bars;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JPanel;
import quarterlight.ui.kit.look.Look;

/** Rows of bars under each other, as wide as there is room. Event thread only. */
abstract class Bars extends JPanel {
    private static final int USUAL_WIDTH = 420;

    /** @param name what the bars show */
    Bars(String name) {
        setOpaque(false);
        Look.named(this, name);
    }

    /** What all rows take, px. */
    abstract int rowsHeight();

    /** Draws the rows, smoothed. */
    abstract void draw(Graphics2D g);

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(USUAL_WIDTH, rowsHeight());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        draw(g);
        g.dispose();
    }
}
