package quarterlight.ui.kit.look;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/** A bar of tools that goes on in another row where its words find no room, so that none is cut. Event thread only. */
public final class WrapBar extends JPanel {
    private static final int EDGE = 8;
    private static final int GAP = 4;

    private int laidOutWidth;

    public WrapBar() {
        super(null);
    }

    /** The rows at a width; places the components if asked to. */
    private int rows(int width, boolean place) {
        int edge = UIScale.scale(EDGE);
        int gap = UIScale.scale(GAP);
        int x = edge;
        int y = gap;
        int row = 0;
        for (Component one : getComponents()) {
            if (!one.isVisible()) {
                continue;
            }
            Dimension size = one.getPreferredSize();
            int wide = Math.min(size.width, Math.max(1, width - 2 * edge));
            if (x > edge && x + wide > width - edge) {
                x = edge;
                y += row + gap;
                row = 0;
            }
            if (place) {
                one.setBounds(x, y, wide, size.height);
            }
            x += wide + gap;
            row = Math.max(row, size.height);
        }
        return y + row + gap;
    }

    @Override
    public void doLayout() {
        rows(getWidth(), true);
    }

    /** As high as the rows are at the width it has. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(getMinimumSize().width, rows(getWidth() == 0 ? Integer.MAX_VALUE / 2 : getWidth(), false));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(UIScale.scale(EDGE), rows(getWidth() == 0 ? Integer.MAX_VALUE / 2 : getWidth(), false));
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        if (width != laidOutWidth) {
            laidOutWidth = width;
            SwingUtilities.invokeLater(this::revalidate);
        }
    }
}
