package quarterlight.demo;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.function.DoubleBinaryOperator;

/**
 * A sheet with height, color and luster at each pixel: shapes are raised, sunk, dyed and covered one after the other, then
 * {@link Light} falls on it. Heights are in pixels towards the viewer; y grows downward. Not thread safe.
 */
final class Relief {
    final int w;
    final int h;
    final float[] z;
    final float[] r;
    final float[] g;
    final float[] b;
    final float[] mirror;
    final float[] metal;
    final float[] shine;
    final float[] dark;
    final Noise noise;
    double bendX;
    double bendY;
    double leanX;
    double leanY;

    Relief(int w, int h, long seed) {
        this.w = w;
        this.h = h;
        int n = w * h;
        z = new float[n];
        r = new float[n];
        g = new float[n];
        b = new float[n];
        mirror = new float[n];
        metal = new float[n];
        shine = new float[n];
        dark = new float[n];
        noise = new Noise(seed);
    }

    Shape all() {
        return new Rectangle2D.Double(-4, -4, w + 8.0, h + 8.0);
    }

    Relief cover(Shape shape, Stuff stuff) {
        return cover(shape, stuff, 0, 1);
    }

    Relief cover(Shape shape, Stuff stuff, double soft, double strength) {
        Tint t = stuff.tint();
        each(shape, soft, (i, a) -> {
            float k = (float) (a * strength);
            mixTint(i, t, k);
            mirror[i] += ((float) stuff.mirror() - mirror[i]) * k;
            metal[i] += ((float) stuff.metal() - metal[i]) * k;
            shine[i] += ((float) stuff.shine() - shine[i]) * k;
        });
        return this;
    }

    Relief dye(Shape shape, String rgb, double soft, double strength) {
        Tint t = Tint.hex(rgb);
        each(shape, soft, (i, a) -> mixTint(i, t, (float) (a * strength)));
        return this;
    }

    Relief raise(Shape shape, double amount, double soft) {
        each(shape, soft, (i, a) -> z[i] += (float) (a * amount));
        return this;
    }

    /** Heights added as a function of x and y, px. */
    Relief form(DoubleBinaryOperator height) {
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                z[y * w + x] += (float) height.applyAsDouble(x, y);
            }
        }
        return this;
    }

    /** Uneven height inside the shape. */
    Relief rough(Shape shape, double amount, double scale, int octaves) {
        each(shape, 1.5, (i, a) -> {
            int x = i % w;
            int y = i / w;
            z[i] += (float) (a * amount * (noise.fractal(x / scale, y / scale, octaves) - 0.5));
        });
        return this;
    }

    /** Stains: the color comes through where the noise exceeds {@code from}, fully at {@code to}. */
    Relief mottle(Shape shape, String rgb, double strength, double scale, double from, double to, double soft) {
        Tint t = Tint.hex(rgb);
        each(shape, soft, (i, a) -> {
            int x = i % w;
            int y = i / w;
            double n = step(from, to, noise.fractal(x / scale + 31, y / scale - 57, 5));
            mixTint(i, t, (float) (a * n * strength));
            mirror[i] *= (float) (1 - 0.6 * a * n * strength);
        });
        return this;
    }

    /** The luster of the shape times a factor. */
    Relief dull(Shape shape, double factor, double soft) {
        each(shape, soft, (i, a) -> mirror[i] *= (float) (1 - a * (1 - factor)));
        return this;
    }

    Relief shadow(Shape shape, double dx, double dy, double soft, double strength) {
        Shape moved = AffineTransform.getTranslateInstance(dx, dy).createTransformedShape(shape);
        each(moved, soft, (i, a) -> dark[i] = Math.max(dark[i], (float) (a * strength)));
        return this;
    }

    /** Takes the shadow away again where something stands above it. */
    Relief clearShadow(Shape shape) {
        each(shape, 0, (i, a) -> dark[i] *= 1 - a);
        return this;
    }

    Relief flatten(Shape shape, double height) {
        each(shape, 0, (i, a) -> z[i] += (float) ((height - z[i]) * a));
        return this;
    }

    Relief groove(Shape line, double width, double depth, double soft) {
        Shape stroke =
                new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND).createStrokedShape(line);
        return raise(stroke, -depth, soft);
    }

    static Shape stroke(Shape line, double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND).createStrokedShape(line);
    }

    static Shape disc(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    static double step(double from, double to, double x) {
        double t = Math.max(0, Math.min(1, (x - from) / (to - from)));
        return t * t * (3 - 2 * t);
    }

    interface Dot {
        void at(int i, float cover);
    }

    void each(Shape shape, double soft, Dot dot) {
        Mask mask = Mask.of(shape, soft, w, h);
        int fromY = Math.max(0, mask.y());
        int toY = Math.min(h, mask.y() + mask.h());
        int fromX = Math.max(0, mask.x());
        int toX = Math.min(w, mask.x() + mask.w());
        for (int y = fromY; y < toY; y++) {
            int from = (y - mask.y()) * mask.w() - mask.x();
            for (int x = fromX; x < toX; x++) {
                float a = mask.at(from + x);
                if (a > 0.002f) {
                    dot.at(y * w + x, a);
                }
            }
        }
    }

    private void mixTint(int i, Tint t, float k) {
        r[i] += (t.r() - r[i]) * k;
        g[i] += (t.g() - g[i]) * k;
        b[i] += (t.b() - b[i]) * k;
    }
}
