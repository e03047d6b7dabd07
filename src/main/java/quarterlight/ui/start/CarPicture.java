package quarterlight.ui.start;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.Icon;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;

/** A small picture of the car of a visit, or an empty plate where there is none. Event thread only. */
final class CarPicture implements Icon {
    private static final int WIDTH = 96;
    private static final int HEIGHT = 64;

    private Optional<BufferedImage> picture = Optional.empty();

    void show(BufferedImage image) {
        picture = Optional.of(image);
    }

    boolean isShown() {
        return picture.isPresent();
    }

    @Override
    public int getIconWidth() {
        return Look.px(WIDTH);
    }

    @Override
    public int getIconHeight() {
        return Look.px(HEIGHT);
    }

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create(x, y, getIconWidth(), getIconHeight());
        try {
            Palette palette = Look.palette();
            g.setColor(Palette.mix(palette.paper(), palette.ink(), 0.08));
            g.fillRect(0, 0, getIconWidth(), getIconHeight());
            picture.ifPresent(image -> cover(g, image));
            g.setColor(palette.line());
            g.drawRect(0, 0, getIconWidth() - 1, getIconHeight() - 1);
        } finally {
            g.dispose();
        }
    }

    /** The middle of the picture, so large that it fills the plate. */
    private void cover(Graphics2D g, BufferedImage image) {
        double scale =
                Math.max((double) getIconWidth() / image.getWidth(), (double) getIconHeight() / image.getHeight());
        int wide = (int) Math.ceil(image.getWidth() * scale);
        int high = (int) Math.ceil(image.getHeight() * scale);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(image, (getIconWidth() - wide) / 2, (getIconHeight() - high) / 2, wide, high, null);
    }
}
