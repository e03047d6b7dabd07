package quarterlight.diagram.scene;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import quarterlight.car.ZoneId;

/** One thing drawn, in px of the sheet, in drawing order. */
sealed interface DrawnItem {
    /** Everything it can touch. */
    Rectangle2D bounds();

    /** A filled area; of a zone if it is one. */
    record Filled(Shape shape, Color color, Optional<ZoneId> zone, Rectangle2D bounds) implements DrawnItem {
        static Filled of(Shape shape, Color color) {
            return new Filled(shape, color, Optional.empty(), shape.getBounds2D());
        }

        static Filled of(Shape shape, Color color, ZoneId zone) {
            return new Filled(shape, color, Optional.of(zone), shape.getBounds2D());
        }
    }

    /** A line of a width; {@code plain} for many short straight strokes whose ends need no rounding. */
    record Stroked(Shape shape, Color color, double width, boolean plain, Rectangle2D bounds) implements DrawnItem {
        static Stroked of(Shape shape, Color color, double width) {
            return new Stroked(shape, color, width, false, grown(shape.getBounds2D(), width));
        }

        static Stroked texture(Shape shape, Color color, double width) {
            return new Stroked(shape, color, width, true, grown(shape.getBounds2D(), width));
        }
    }

    /** Dots of {@link Texture#DOT} px. */
    final class Dots implements DrawnItem {
        private final double[] centers;
        private final Color color;
        private final Rectangle2D bounds;

        /** @param centers x and y in turn; not to be changed afterwards */
        Dots(double[] centers, Color color) {
            this.centers = centers;
            this.color = color;
            Rectangle2D all = new Rectangle2D.Double();
            for (int i = 0; i < centers.length; i += 2) {
                if (i == 0) {
                    all.setRect(centers[0], centers[1], 0, 0);
                }
                all.add(centers[i], centers[i + 1]);
            }
            bounds = grown(all, 2);
        }

        int count() {
            return centers.length / 2;
        }

        double x(int dot) {
            return centers[2 * dot];
        }

        double y(int dot) {
            return centers[2 * dot + 1];
        }

        Color color() {
            return color;
        }

        @Override
        public Rectangle2D bounds() {
            return bounds;
        }
    }

    /** One line of text with its baseline; {@code width} as measured. */
    record Words(String text, double left, double baseline, double size, boolean bold, Color color, double width)
            implements DrawnItem {
        @Override
        public Rectangle2D bounds() {
            return new Rectangle2D.Double(left - 1, baseline - size, width + 2, 1.3 * size);
        }
    }

    /** A rectangle grown on every side. */
    static Rectangle2D grown(Rectangle2D r, double by) {
        return new Rectangle2D.Double(r.getX() - by, r.getY() - by, r.getWidth() + 2 * by, r.getHeight() + 2 * by);
    }
}
