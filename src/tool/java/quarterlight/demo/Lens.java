package quarterlight.demo;

import java.awt.geom.Point2D;

/**
 * How a flat sheet is seen by a camera: a plane turned by two angles under a pinhole, so a homography from sheet pixels to
 * photo pixels. Without tilt it is a shift and a scale.
 */
final class Lens {
    private final double[] m;
    private final double[] back;

    private Lens(double[] m) {
        this.m = m;
        this.back = inverse(m);
    }

    /**
     * @param zoom photo pixels per sheet pixel at the middle
     * @param tilt degrees the top of the sheet leans away
     * @param turn degrees its right side leans away
     * @param roll degrees clockwise in the picture
     */
    static Lens of(Relief s, int photoW, int photoH, double zoom, double tilt, double turn, double roll) {
        double a = Math.toRadians(tilt);
        double b = Math.toRadians(turn);
        double c = Math.toRadians(roll);
        double f = 1.5 * Math.max(photoW, photoH);
        // sheet point (x, y, 0) turned about y by b, then about x by a
        double xx = Math.cos(b);
        double xz = Math.sin(b);
        double yx = 0;
        double yy = Math.cos(a);
        double yz = -Math.sin(a);
        double xy = Math.sin(b) * Math.sin(a);
        double xzt = xz * Math.cos(a);
        double k = zoom / f;
        double[] p = {
            zoom * xx, zoom * yx, 0,
            zoom * xy, zoom * yy, 0,
            k * xzt, k * yz, 1
        };
        double cos = Math.cos(c);
        double sin = Math.sin(c);
        double[] rolled = {
            cos * p[0] - sin * p[3],
            cos * p[1] - sin * p[4],
            0,
            sin * p[0] + cos * p[3],
            sin * p[1] + cos * p[4],
            0,
            p[6],
            p[7],
            p[8]
        };
        double[] before = {1, 0, -s.w * 0.5, 0, 1, -s.h * 0.5, 0, 0, 1};
        double[] after = {1, 0, photoW * 0.5, 0, 1, photoH * 0.5, 0, 0, 1};
        return new Lens(times(after, times(rolled, before)));
    }

    Point2D.Double seen(double x, double y) {
        return apply(m, x, y);
    }

    Point2D.Double onSheet(double x, double y) {
        return apply(back, x, y);
    }

    /** The photo in linear light, from the sheet in linear light. */
    float[][] take(float[][] sheet, int sw, int sh, int pw, int ph) {
        float[][] out = new float[3][pw * ph];
        for (int y = 0; y < ph; y++) {
            for (int x = 0; x < pw; x++) {
                double d = back[6] * (x + 0.5) + back[7] * (y + 0.5) + back[8];
                double sx = (back[0] * (x + 0.5) + back[1] * (y + 0.5) + back[2]) / d - 0.5;
                double sy = (back[3] * (x + 0.5) + back[4] * (y + 0.5) + back[5]) / d - 0.5;
                sx = mirrored(sx, sw - 1.001);
                sy = mirrored(sy, sh - 1.001);
                int ix = (int) sx;
                int iy = (int) sy;
                float fx = (float) (sx - ix);
                float fy = (float) (sy - iy);
                int i = iy * sw + ix;
                for (int c = 0; c < 3; c++) {
                    float[] a = sheet[c];
                    float top = a[i] + (a[i + 1] - a[i]) * fx;
                    float bottom = a[i + sw] + (a[i + sw + 1] - a[i + sw]) * fx;
                    out[c][y * pw + x] = top + (bottom - top) * fy;
                }
            }
        }
        return out;
    }

    private static double mirrored(double v, double most) {
        double folded = v < 0 ? -v : v > most ? 2 * most - v : v;
        return Math.max(0, Math.min(most, folded));
    }

    private static Point2D.Double apply(double[] t, double x, double y) {
        double d = t[6] * x + t[7] * y + t[8];
        return new Point2D.Double((t[0] * x + t[1] * y + t[2]) / d, (t[3] * x + t[4] * y + t[5]) / d);
    }

    private static double[] times(double[] a, double[] b) {
        double[] c = new double[9];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    c[i * 3 + j] += a[i * 3 + k] * b[k * 3 + j];
                }
            }
        }
        return c;
    }

    private static double[] inverse(double[] t) {
        double a = t[4] * t[8] - t[5] * t[7];
        double b = t[5] * t[6] - t[3] * t[8];
        double c = t[3] * t[7] - t[4] * t[6];
        double det = t[0] * a + t[1] * b + t[2] * c;
        double[] out = {
            a, t[2] * t[7] - t[1] * t[8], t[1] * t[5] - t[2] * t[4],
            b, t[0] * t[8] - t[2] * t[6], t[2] * t[3] - t[0] * t[5],
            c, t[1] * t[6] - t[0] * t[7], t[0] * t[4] - t[1] * t[3]
        };
        for (int i = 0; i < 9; i++) {
            out[i] /= det;
        }
        return out;
    }
}
