package quarterlight.ui.compare;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import quarterlight.ui.kit.look.DrawnComponent;
import quarterlight.visit.photo.PhotoId;

/** Small pictures of the cars and their matters. Event thread only. */
final class CarPortraits {
    private static final int LONG_SIDE = 480;

    private final Asking photos;

    /** Where pictures come from. */
    @FunctionalInterface
    interface Asking {
        /** @param arrived told on the event thread; empty for a photo that cannot be shown */
        void ask(int car, PhotoId photo, int longSidePx, Consumer<Optional<BufferedImage>> arrived);
    }

    CarPortraits(Asking photos) {
        this.photos = photos;
    }

    JComponent of(int car, PhotoId photo) {
        Portrait portrait = new Portrait();
        photos.ask(car, photo, LONG_SIDE, portrait::show);
        return portrait;
    }

    /** A picture fitted into its frame, at its left. */
    private static final class Portrait extends DrawnComponent {
        private transient Optional<BufferedImage> picture = Optional.empty();

        Portrait() {
            setPreferredSize(new Dimension(160, 120));
            setMinimumSize(new Dimension(0, 0));
        }

        @Override
        protected AccessibleRole role() {
            return AccessibleRole.ICON;
        }

        void show(Optional<BufferedImage> fresh) {
            picture = fresh;
            repaint();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            picture.ifPresent(image -> {
                Graphics2D g = (Graphics2D) graphics.create();
                g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
                double scale =
                        Math.min((double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
                g.drawImage(image, 0, 0, (int) (image.getWidth() * scale), (int) (image.getHeight() * scale), null);
                g.dispose();
            });
        }
    }
}
