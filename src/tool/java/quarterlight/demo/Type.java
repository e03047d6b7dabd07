package quarterlight.demo;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.SplittableRandom;

/** Letters as shapes, from the typeface that the program carries, and figures of seven bars as displays have them. */
final class Type {
    private static final FontRenderContext PLAIN = new FontRenderContext(null, true, true);
    private static final String[] BARS = {
        "abcdef", "bc", "abged", "abgcd", "fgbc", "afgcd", "afgedc", "abc", "abcdefg", "abcdfg"
    };
    private final Font regular = load("SourceSans3-Regular.ttf");
    private final Font semibold = load("SourceSans3-SemiBold.ttf");
    private final Font italic = load("SourceSans3-Italic.ttf");

    private static Font load(String name) {
        try (InputStream in = Type.class.getResourceAsStream("/quarterlight/fonts/" + name)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(name, e);
        }
    }

    Shape plain(String text, double x, double y, double size) {
        return outline(regular, text, x, y, size);
    }

    Shape strong(String text, double x, double y, double size) {
        return outline(semibold, text, x, y, size);
    }

    Shape slanted(String text, double x, double y, double size) {
        return outline(italic, text, x, y, size);
    }

    double width(String text, double size) {
        return semibold.deriveFont((float) size)
                .createGlyphVector(PLAIN, text)
                .getLogicalBounds()
                .getWidth();
    }

    /** Each letter struck by hand: a little out of line and turned. */
    Shape struck(String text, double x, double y, double size, double pitch, SplittableRandom random) {
        Path2D all = new Path2D.Double();
        double at = x;
        for (String letter : text.split("")) {
            Shape glyph = outline(semibold, letter, 0, 0, size);
            Rectangle2D box = glyph.getBounds2D();
            AffineTransform move = new AffineTransform();
            move.translate(
                    at + pitch / 2 + (random.nextDouble() - 0.5) * size * 0.05,
                    y + (random.nextDouble() - 0.5) * size * 0.10);
            move.rotate((random.nextDouble() - 0.5) * 0.09);
            move.translate(-box.getCenterX(), 0);
            all.append(move.createTransformedShape(glyph), false);
            at += pitch;
        }
        return all;
    }

    private static Shape outline(Font font, String text, double x, double y, double size) {
        return font.deriveFont((float) size).createGlyphVector(PLAIN, text).getOutline((float) x, (float) y);
    }

    /** Digits, point, colon, minus and blank as bars; the letters O V E R n o as a display can show them. */
    static Shape display(String text, double x, double y, double height) {
        Area all = new Area();
        double at = x;
        double w = height * 0.52;
        double t = height * 0.13;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '.') {
                all.add(new Area(new Rectangle2D.Double(at - t * 0.2, y + height - t, t, t)));
                at += t * 1.3;
            } else if (c == ':') {
                all.add(new Area(new Rectangle2D.Double(at, y + height * 0.28, t, t)));
                all.add(new Area(new Rectangle2D.Double(at, y + height * 0.65, t, t)));
                at += t * 2.2;
            } else {
                bars(c).chars().forEach(new Bars(all, at, y, w, height, t)::add);
                at += w + t * 1.5;
            }
        }
        AffineTransform lean = AffineTransform.getTranslateInstance(x, y + height);
        lean.shear(-0.09, 0);
        lean.translate(-x, -y - height);
        return lean.createTransformedShape(all);
    }

    private static String bars(char c) {
        if (Character.isDigit(c)) {
            return BARS[c - '0'];
        }
        return switch (c) {
            case '-' -> "g";
            case 'O' -> "abcdef";
            case 'o' -> "cdeg";
            case 'n' -> "ceg";
            case 'E' -> "adefg";
            case 'r' -> "eg";
            case 'u' -> "cde";
            case 'L' -> "def";
            default -> "";
        };
    }

    private record Bars(Area all, double x, double y, double w, double h, double t) {
        void add(int bar) {
            double g = t * 0.18;
            double half = (h - t) / 2;
            switch (bar) {
                case 'a' -> flat(0);
                case 'g' -> flat(half);
                case 'd' -> flat(h - t);
                case 'f' -> upright(0, t + g - t / 2);
                case 'b' -> upright(w - t, t + g - t / 2);
                case 'e' -> upright(0, half + g + t / 2);
                case 'c' -> upright(w - t, half + g + t / 2);
                default -> throw new IllegalArgumentException("no bar " + bar);
            }
        }

        private void flat(double dy) {
            all.add(new Area(new Rectangle2D.Double(x + t * 0.35, y + dy, w - t * 0.7, t)));
        }

        private void upright(double dx, double dy) {
            all.add(new Area(new Rectangle2D.Double(x + dx, y + dy, t, (h - t) / 2 - t * 0.35)));
        }
    }
}
