package quarterlight.ui.kit.view;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import quarterlight.ui.kit.look.Look;

/** A glass that lies on the photo and follows the pointer or the arrow keys: what is under its middle, enlarged. Event thread only. */
final class Loupe {
    private static final int WIDTH = 260;
    private static final int HEIGHT = 190;
    private static final int STEP = 12;
    private static final double TIMES = 3;
    private static final double LEAST = 1;
    private static final double MOST = 8;

    private boolean on;
    private Optional<Point> at = Optional.empty();

    boolean isOn() {
        return on;
    }

    void lay(boolean wanted) {
        on = wanted;
    }

    /** Follows the pointer; px of the component. */
    void at(Point pointer) {
        at = Optional.of(new Point(pointer));
    }

    /** Lies in the middle again, as for another photo. */
    void toMiddle() {
        at = Optional.empty();
    }

    /** Moves by steps of the arrow keys within a frame. */
    void move(int dx, int dy, int width, int height) {
        Point now = middle(width, height);
        at = Optional.of(new Point(
                Math.max(0, Math.min(width, now.x + dx * STEP)), Math.max(0, Math.min(height, now.y + dy * STEP))));
    }

    Point middle(int width, int height) {
        return at.orElse(new Point(width / 2, height / 2));
    }

    /** Device pixels per pixel of the photo under the glass. */
    static double zoom(double scale) {
        return Math.min(MOST, Math.max(LEAST, TIMES * scale));
    }

    /**
     * Draws the glass.
     *
     * @param g in device pixels of the frame
     * @param device device pixels per px
     */
    void paint(Graphics2D g, BufferedImage picture, ViewTransform t, Tone tone, double device) {
        Point now = middle((int) (t.viewWidth() / device), (int) (t.viewHeight() / device));
        double x = now.x * device;
        double y = now.y * device;
        int width = (int) Math.min(WIDTH * device, t.viewWidth() * 0.8);
        int height = (int) Math.min(HEIGHT * device, t.viewHeight() * 0.8);
        int left = (int) Math.max(0, Math.min(t.viewWidth() - width, x - width / 2.0));
        int top = (int) Math.max(0, Math.min(t.viewHeight() - height, y - height / 2.0));
        Point2D under = t.toPhoto(x, y);
        AffineTransform lens = AffineTransform.getTranslateInstance(width / 2.0, height / 2.0);
        lens.quadrantRotate(t.quarters());
        lens.scale(zoom(t.scale()), zoom(t.scale()));
        lens.translate(-under.getX(), -under.getY());
        lens.scale(t.photoWidth() / picture.getWidth(), t.photoHeight() / picture.getHeight());
        BufferedImage seen = new BufferedImage(Math.max(1, width), Math.max(1, height), BufferedImage.TYPE_INT_RGB);
        Graphics2D glass = seen.createGraphics();
        glass.setColor(Look.palette().sheet());
        glass.fillRect(0, 0, width, height);
        glass.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        glass.drawImage(picture, lens, null);
        glass.dispose();
        g.drawImage(tone.of(seen), left, top, null);
        g.setColor(Look.palette().sheet());
        g.setStroke(new BasicStroke((float) (4 * device)));
        g.draw(new Rectangle(left, top, width, height));
        g.setColor(Look.palette().accent());
        g.setStroke(new BasicStroke((float) (2 * device)));
        g.draw(new Rectangle(left, top, width, height));
    }
}
