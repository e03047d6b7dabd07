package quarterlight.ui.kit.view;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** Holds a drawing that fills whatever room it is given: as much as is seen, or so many times that. Event thread only. */
public final class ZoomHolder extends JPanel implements Scrollable {
    private static final int UNIT_PX = 24;

    private double factor = 1;

    public ZoomHolder(JComponent drawing) {
        super(new BorderLayout());
        add(drawing);
    }

    public void factor(double times) {
        factor = times;
        revalidate();
    }

    @Override
    public Dimension getPreferredSize() {
        if (factor == 1 || getParent() == null) {
            return super.getPreferredSize();
        }
        Dimension seen = getParent().getSize();
        return new Dimension((int) Math.round(seen.width * factor), (int) Math.round(seen.height * factor));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return super.getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UNIT_PX;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height / 2;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return factor == 1;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return factor == 1;
    }
}
