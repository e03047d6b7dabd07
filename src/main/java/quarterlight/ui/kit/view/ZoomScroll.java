package quarterlight.ui.kit.view;

import java.awt.Point;
import java.awt.event.MouseWheelEvent;
import java.util.function.DoubleConsumer;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import quarterlight.ui.kit.look.Look;

/**
 * A picture that is zoomed by the wheel with Ctrl, as many touch pads send a pinch, about the place under the pointer; the wheel alone moves it.
 * Event thread only.
 */
public final class ZoomScroll extends JScrollPane {
    private static final double WHEEL = 1.15;
    private static final int UNIT_PX = 24;

    private final double most;
    private final transient DoubleConsumer zoomed;
    private double factor = 1;

    /**
     * @param view whose preferred size follows the factor that {@code zoomed} is told
     * @param most the largest factor; 1 shows the view as wide as there is room
     */
    public ZoomScroll(JComponent view, double most, DoubleConsumer zoomed) {
        super(view);
        this.most = most;
        this.zoomed = zoomed;
        Look.bare(this);
        getVerticalScrollBar().setUnitIncrement(UNIT_PX);
        getHorizontalScrollBar().setUnitIncrement(UNIT_PX);
    }

    public double factor() {
        return factor;
    }

    @Override
    protected void processMouseWheelEvent(MouseWheelEvent e) {
        if (e.isControlDown() || e.isMetaDown()) {
            zoom(Math.pow(WHEEL, -e.getPreciseWheelRotation()), e.getPoint());
            e.consume();
        } else {
            super.processMouseWheelEvent(e);
        }
    }

    /** Zooms about the middle. */
    public void zoom(double by) {
        zoom(by, new Point(getWidth() / 2, getHeight() / 2));
    }

    /** The whole again, or twice as large about a place. */
    public void toggle(Point at) {
        zoom(factor > 1 ? 1 / factor : 2, at);
    }

    /** @param at what lies there stays there; px of this component */
    private void zoom(double by, Point at) {
        double next = Math.max(1, Math.min(most, factor * by));
        if (next == factor) {
            return;
        }
        JViewport port = getViewport();
        Point held = SwingUtilities.convertPoint(this, at, port.getView());
        double ratio = next / factor;
        factor = next;
        zoomed.accept(factor);
        port.getView().revalidate();
        port.validate();
        validate();
        int x = (int) Math.round(held.x * ratio) - at.x;
        int y = (int) Math.round(held.y * ratio) - at.y;
        port.setViewPosition(new Point(
                Math.max(0, Math.min(x, port.getView().getWidth() - port.getWidth())),
                Math.max(0, Math.min(y, port.getView().getHeight() - port.getHeight()))));
        port.repaint();
    }
}
