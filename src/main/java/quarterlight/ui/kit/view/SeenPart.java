package quarterlight.ui.kit.view;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Optional;
import quarterlight.ui.kit.look.Look;

/** The part of a picture that is seen in its frame, drawn once at the size of the screen and kept until something else is seen. Event thread only. */
final class SeenPart {
    /** What was drawn, and where it lies in the frame. */
    private record Drawn(
            BufferedImage source, AffineTransform transform, Rectangle place, Tone tone, BufferedImage picture) {}

    private Optional<Drawn> kept = Optional.empty();

    void forget() {
        kept = Optional.empty();
    }

    /** The picture that was drawn last. */
    Optional<BufferedImage> source() {
        return kept.map(Drawn::source);
    }

    void draw(Graphics2D g, BufferedImage picture, ViewTransform t, Tone tone) {
        AffineTransform whole = new AffineTransform(t.toView());
        whole.scale(t.photoWidth() / picture.getWidth(), t.photoHeight() / picture.getHeight());
        Rectangle place = whole.createTransformedShape(new Rectangle(picture.getWidth(), picture.getHeight()))
                .getBounds()
                .intersection(new Rectangle((int) t.viewWidth(), (int) t.viewHeight()));
        if (place.isEmpty()) {
            return;
        }
        if (kept.isEmpty()
                || kept.get().source() != picture
                || !kept.get().transform().equals(whole)
                || kept.get().tone() != tone
                || !kept.get().place().equals(place)) {
            kept = Optional.of(new Drawn(picture, whole, place, tone, tone.of(drawn(picture, place, whole))));
        }
        g.drawImage(kept.get().picture(), place.x, place.y, null);
    }

    private static BufferedImage drawn(BufferedImage picture, Rectangle place, AffineTransform whole) {
        BufferedImage part = new BufferedImage(place.width, place.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = part.createGraphics();
        try {
            g.setColor(Look.palette().sheet());
            g.fillRect(0, 0, place.width, place.height);
            g.translate(-place.x, -place.y);
            boolean enlarged = whole.getScaleX() * whole.getScaleX() + whole.getShearX() * whole.getShearX() >= 4;
            g.setRenderingHint(
                    RenderingHints.KEY_INTERPOLATION,
                    enlarged
                            ? RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR
                            : RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(picture, whole, null);
        } finally {
            g.dispose();
        }
        return part;
    }
}
