package quarterlight.rust.plane;

import java.util.List;
import java.util.Optional;
import quarterlight.visit.annotation.PixelPoint;

/**
 * The map of one plane to another that a pinhole camera makes: lines stay lines, so mapped corners bound the mapped area
 * exactly. Immutable.
 * <p>(x, y) goes to ((h0 x + h1 y + h2) / w, (h3 x + h4 y + h5) / w) with w = h6 x + h7 y + h8. Found from four pairs of
 * points by way of the projective basis: the map from the unit basis to four points is their matrix times a diagonal,
 * and two such maps combine. Source: R. Hartley, A. Zisserman, Multiple View Geometry in Computer Vision, 2nd edition,
 * 2004, chapters 2 and 4 (from memory); coordinates are normalised first as in chapter 4.
 */
public final class Homography {
    /** Three of four normalised points span less than this: they lie on one line. */
    private static final double COLLINEAR = 1e-9;

    private final double[] h;

    private Homography(double[] h) {
        this.h = h;
    }

    /**
     * The map that takes four points to four others, in order.
     *
     * @return empty if three points of either side lie on one line
     * @throws IllegalArgumentException if there are not four points on each side
     */
    public static Optional<Homography> ofFourPoints(List<PixelPoint> from, List<PixelPoint> to) {
        if (from.size() != 4 || to.size() != 4) {
            throw new IllegalArgumentException("a homography takes 4 points to 4 points");
        }
        double[] normalFrom = normalisation(from);
        double[] normalTo = normalisation(to);
        Optional<double[]> basisFrom = basis(normalised(from, normalFrom));
        Optional<double[]> basisTo = basis(normalised(to, normalTo));
        if (basisFrom.isEmpty() || basisTo.isEmpty()) {
            return Optional.empty();
        }
        double[] middle = product(basisTo.get(), adjugate(basisFrom.get()));
        double[] full = product(product(adjugate(normalTo), middle), normalFrom);
        return Optional.of(new Homography(withLastOne(full)));
    }

    /** The nine numbers h0 to h8 by rows, with h8 = 1 unless the origin maps to infinity. */
    public double[] rows() {
        return h.clone();
    }

    /** The mapped point. It has a meaning only on the side of the horizon where {@link #depth} keeps its sign. */
    public PixelPoint map(PixelPoint p) {
        double w = depth(p);
        return new PixelPoint((h[0] * p.x() + h[1] * p.y() + h[2]) / w, (h[3] * p.x() + h[4] * p.y() + h[5]) / w);
    }

    /** The divisor w at a point: zero on the horizon, of one sign on each side of it. */
    public double depth(PixelPoint p) {
        return h[6] * p.x() + h[7] * p.y() + h[8];
    }

    private static double[] withLastOne(double[] full) {
        double most = 0;
        for (double value : full) {
            most = Math.max(most, Math.abs(value));
        }
        double divisor = Math.abs(full[8]) > 1e-12 * most ? full[8] : most;
        double[] scaled = new double[9];
        for (int i = 0; i < 9; i++) {
            scaled[i] = full[i] / divisor;
        }
        return scaled;
    }

    /** Shift to the mean and scale to a mean distance of the root of 2, as a matrix by rows. */
    private static double[] normalisation(List<PixelPoint> points) {
        double mx = points.stream().mapToDouble(PixelPoint::x).average().orElse(0);
        double my = points.stream().mapToDouble(PixelPoint::y).average().orElse(0);
        double distance = points.stream()
                .mapToDouble(p -> Math.hypot(p.x() - mx, p.y() - my))
                .average()
                .orElse(0);
        double s = distance > 0 ? Math.sqrt(2) / distance : 1;
        return new double[] {s, 0, -s * mx, 0, s, -s * my, 0, 0, 1};
    }

    private static double[][] normalised(List<PixelPoint> points, double[] n) {
        return points.stream()
                .map(p -> new double[] {n[0] * p.x() + n[2], n[4] * p.y() + n[5]})
                .toArray(double[][]::new);
    }

    /** The matrix that takes the unit basis and (1, 1, 1) to four points; empty if three lie on one line. */
    private static Optional<double[]> basis(double[][] p) {
        double a = turn(p[1], p[2], p[3]);
        double b = turn(p[2], p[0], p[3]);
        double c = turn(p[0], p[1], p[3]);
        double d = turn(p[0], p[1], p[2]);
        if (Math.min(Math.min(Math.abs(a), Math.abs(b)), Math.min(Math.abs(c), Math.abs(d))) < COLLINEAR) {
            return Optional.empty();
        }
        return Optional.of(
                new double[] {a * p[0][0], b * p[1][0], c * p[2][0], a * p[0][1], b * p[1][1], c * p[2][1], a, b, c});
    }

    private static double turn(double[] p, double[] q, double[] r) {
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
    }

    private static double[] product(double[] a, double[] b) {
        double[] out = new double[9];
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                for (int k = 0; k < 3; k++) {
                    out[3 * row + column] += a[3 * row + k] * b[3 * k + column];
                }
            }
        }
        return out;
    }

    private static double[] adjugate(double[] m) {
        return new double[] {
            m[4] * m[8] - m[5] * m[7], m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
            m[5] * m[6] - m[3] * m[8], m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
            m[3] * m[7] - m[4] * m[6], m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3]
        };
    }
}
