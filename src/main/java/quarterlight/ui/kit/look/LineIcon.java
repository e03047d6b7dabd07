package quarterlight.ui.kit.look;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import javax.swing.Icon;

/** A sign drawn in lines in the color of its component's text; scales with the screen. Immutable. */
public final class LineIcon implements Icon {
    private static final double UNITS = 24;
    private final Shape lines;
    private final int size;

    /**
     * @param lines within a square of 24 units
     * @param size side on the screen in px before scaling
     */
    public LineIcon(Shape lines, int size) {
        this.lines = lines;
        this.size = size;
    }

    @Override
    public void paintIcon(Component c, Graphics g, int x, int y) {
        Graphics2D g2 = (Graphics2D) g.create();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g2.setColor(c.isEnabled() ? c.getForeground() : Look.palette().secondInk());
        g2.translate(x, y);
        double scale = getIconWidth() / UNITS;
        g2.scale(scale, scale);
        g2.setStroke(new BasicStroke(1.4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g2.draw(lines);
        g2.dispose();
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(size);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(size);
    }
}
