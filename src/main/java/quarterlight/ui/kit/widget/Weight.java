package quarterlight.ui.kit.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import javax.swing.Icon;
import quarterlight.ui.kit.look.Look;

/** How heavily what a cell says weighs: what is grave is seen first, what says nothing steps back. The words say it too. */
public enum Weight {
    /** Says that there is nothing to say: not applicable, not tried. */
    QUIET,
    PLAIN,
    /** Asks to be looked at again. */
    CAUTION,
    GRAVE;

    /** In which color it is written. */
    Color ink() {
        return switch (this) {
            case QUIET -> Look.palette().secondInk();
            case PLAIN -> Look.palette().ink();
            case CAUTION -> Look.palette().caution();
            case GRAVE -> Look.palette().grave();
        };
    }

    boolean isHeavy() {
        return this == CAUTION || this == GRAVE;
    }

    /** The small square before a heavy word: filled if it is grave, open if it is a caution. */
    Icon sign() {
        return new Square(this);
    }

    private record Square(Weight weight) implements Icon {
        private static final int SIDE = 8;

        @Override
        public void paintIcon(Component c, Graphics g, int x, int y) {
            int side = UIScale.scale(SIDE);
            g.setColor(weight.ink());
            if (weight == GRAVE) {
                g.fillRect(x, y, side, side);
            } else {
                g.drawRect(x, y, side - 1, side - 1);
                g.drawRect(x + 1, y + 1, side - 3, side - 3);
            }
        }

        @Override
        public int getIconWidth() {
            return UIScale.scale(SIDE);
        }

        @Override
        public int getIconHeight() {
            return UIScale.scale(SIDE);
        }
    }
}
