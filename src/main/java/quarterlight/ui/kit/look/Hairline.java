package quarterlight.ui.kit.look;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Insets;
import javax.swing.border.AbstractBorder;

/** A line of one pixel at one side, in the color of lines at the moment it is painted, so that it follows light and dark. */
public final class Hairline extends AbstractBorder {
    /** At which side. */
    public enum Side {
        TOP,
        LEFT,
        RIGHT
    }

    private final Side side;

    public Hairline(Side side) {
        this.side = side;
    }

    @Override
    public void paintBorder(Component c, Graphics g, int x, int y, int width, int height) {
        g.setColor(Look.palette().line());
        switch (side) {
            case TOP -> g.fillRect(x, y, width, 1);
            case LEFT -> g.fillRect(x, y, 1, height);
            case RIGHT -> g.fillRect(x + width - 1, y, 1, height);
        }
    }

    @Override
    public Insets getBorderInsets(Component c, Insets insets) {
        insets.set(side == Side.TOP ? 1 : 0, side == Side.LEFT ? 1 : 0, 0, side == Side.RIGHT ? 1 : 0);
        return insets;
    }
}
