package quarterlight.ui.compare.zoom;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.DrawnComponent;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.widget.ContextMenu;

/** One of two photos of the same place, zoomed and moved together with the other. Event thread only. */
public final class ZoomedPhoto extends DrawnComponent {
    private static final double STEP = 1.25;
    /** Of what is seen, how much an arrow key moves. */
    private static final double SHARE = 0.15;

    private final transient SharedZoom zoom;
    private final String none;
    private transient Optional<BufferedImage> picture = Optional.empty();
    private transient Optional<String> instead = Optional.empty();

    public ZoomedPhoto(SharedZoom zoom, Texts texts) {
        this.zoom = zoom;
        this.none = texts.get("compare.place.no-photo");
        setPreferredSize(new Dimension(480, 320));
        setMinimumSize(new Dimension(120, 90));
        setFocusable(true);
        zoom.onChange(this::repaint);
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(mouse);
        key("LEFT", -1, 0);
        key("RIGHT", 1, 0);
        key("UP", 0, -1);
        key("DOWN", 0, 1);
        addFocusListener(new Seen());
        List<Command> looking = List.of(
                Command.of(texts, "beside.do.closer", () -> zoom.zoom(STEP, 0, 0)),
                Command.of(texts, "beside.do.away", () -> zoom.zoom(1 / STEP, 0, 0)),
                Command.of(texts, "beside.do.whole", () -> toggleWhole(0, 0)));
        ContextMenu.on(this, () -> picture.isPresent() ? looking : List.of());
    }

    /** From the whole photo to one pixel of it for one of the screen, and back. */
    private void toggleWhole(double fromMiddleX, double fromMiddleY) {
        if (zoom.isFitted()) {
            picture.ifPresent(image -> zoom.zoom(Math.max(STEP, 1 / scale()), fromMiddleX, fromMiddleY));
        } else {
            zoom.fit();
        }
    }

    /** An arrow key looks further to one side. */
    private void key(String stroke, int toX, int toY) {
        getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                zoom.pan(toX * SHARE / zoom.factor(), toY * SHARE / zoom.factor());
            }
        });
    }

    /** Shows that the keys go here. */
    private final class Seen implements FocusListener {
        @Override
        public void focusGained(FocusEvent e) {
            repaint();
        }

        @Override
        public void focusLost(FocusEvent e) {
            repaint();
        }
    }

    @Override
    protected AccessibleRole role() {
        return AccessibleRole.CANVAS;
    }

    /** @param message said in place of a picture */
    public void show(Optional<BufferedImage> fresh, Optional<String> message) {
        picture = fresh;
        instead = message;
        repaint();
    }

    private double scale() {
        BufferedImage image = picture.orElseThrow();
        return zoom.factor()
                * Math.min((double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(Look.palette().sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        if (picture.isEmpty()) {
            g.setColor(Look.palette().secondInk());
            g.setFont(getFont());
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.drawString(instead.orElse(none), 12, 24);
        } else {
            BufferedImage image = picture.get();
            double scale = scale();
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.translate(getWidth() / 2.0, getHeight() / 2.0);
            g.scale(scale, scale);
            g.translate(-zoom.x() * image.getWidth(), -zoom.y() * image.getHeight());
            g.drawImage(image, 0, 0, null);
        }
        g.dispose();
        if (isFocusOwner()) {
            graphics.setColor(Look.palette().accent());
            graphics.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
            graphics.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
        }
    }

    /** Turns the wheel into zoom about the pointer and dragging into moving. */
    private final class Mouse extends MouseAdapter {
        private Point last = new Point();

        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            last = e.getPoint();
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            picture.ifPresent(image -> zoom.pan(
                    (last.x - e.getX()) / (scale() * image.getWidth()),
                    (last.y - e.getY()) / (scale() * image.getHeight())));
            last = e.getPoint();
        }

        @Override
        public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2 && SwingUtilities.isLeftMouseButton(e)) {
                picture.ifPresent(image -> toggleWhole(shareX(e, image), shareY(e, image)));
            }
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent e) {
            picture.ifPresent(image ->
                    zoom.zoom(Math.pow(STEP, -e.getPreciseWheelRotation()), shareX(e, image), shareY(e, image)));
        }

        /** How far a point lies from the middle of the frame, as a share of the photo. */
        private double shareX(MouseEvent e, BufferedImage image) {
            return (e.getX() - getWidth() / 2.0) / (scale() * image.getWidth());
        }

        private double shareY(MouseEvent e, BufferedImage image) {
            return (e.getY() - getHeight() / 2.0) / (scale() * image.getHeight());
        }
    }
}
