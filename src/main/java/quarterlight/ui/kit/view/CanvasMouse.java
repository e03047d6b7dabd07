package quarterlight.ui.kit.view;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import javax.swing.SwingUtilities;

/** Zooming by the wheel and moving by dragging. Event thread only. */
final class CanvasMouse extends MouseAdapter {
    private static final double WHEEL = 1.2;

    private final PhotoCanvas canvas;
    private Point last = new Point();

    private CanvasMouse(PhotoCanvas canvas) {
        this.canvas = canvas;
    }

    static void install(PhotoCanvas canvas) {
        CanvasMouse mouse = new CanvasMouse(canvas);
        canvas.addMouseListener(mouse);
        canvas.addMouseMotionListener(mouse);
        canvas.addMouseWheelListener(mouse);
    }

    private boolean isTaken() {
        return canvas.overlay().map(PhotoCanvas.Overlay::takesMouse).orElse(false);
    }

    @Override
    public void mousePressed(MouseEvent e) {
        canvas.requestFocusInWindow();
        last = e.getPoint();
    }

    @Override
    public void mouseMoved(MouseEvent e) {
        canvas.pointer(e.getPoint());
    }

    @Override
    public void mouseDragged(MouseEvent e) {
        canvas.pointer(e.getPoint());
        if (isTaken() && !SwingUtilities.isMiddleMouseButton(e)) {
            return;
        }
        double scale = canvas.deviceScale();
        canvas.transform()
                .filter(t -> !t.isFit())
                .ifPresent(t -> canvas.transform(t.moved((e.getX() - last.x) * scale, (e.getY() - last.y) * scale)));
        last = e.getPoint();
    }

    @Override
    public void mouseClicked(MouseEvent e) {
        if (!isTaken() && e.getClickCount() == 2 && SwingUtilities.isLeftMouseButton(e)) {
            double scale = canvas.deviceScale();
            canvas.transform()
                    .ifPresent(t ->
                            canvas.transform(t.isFit() ? t.at(1, e.getX() * scale, e.getY() * scale) : t.fitted()));
        }
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent e) {
        double factor = Math.pow(WHEEL, -e.getPreciseWheelRotation());
        double scale = canvas.deviceScale();
        canvas.transform().ifPresent(t -> canvas.transform(t.zoomed(factor, e.getX() * scale, e.getY() * scale)));
    }
}
