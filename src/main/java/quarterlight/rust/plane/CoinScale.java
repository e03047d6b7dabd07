package quarterlight.rust.plane;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale.Coin;
import quarterlight.visit.annotation.PixelPoint;

/**
 * The scale that a coin gives: its rim is a circle on the panel and an ellipse on the photo. Immutable.
 * <p>Taken as a parallel projection: near the coin the panel is shortened along the ellipse's small axis only, so every
 * area there is worth (D / 2a)(D / 2b) mm2 a square pixel. Farther away than a few coins the perspective of the camera,
 * which one ellipse does not show, spoils that. The ellipse is the conic A x2 + B xy + C y2 + D x + E y = 1 about the
 * rim's middle that fits best by least squares.
 *
 * @param majorPx half the long axis, pixels
 * @param minorPx half the short axis, pixels
 * @param majorRadians direction of the long axis from the x axis towards the y axis
 * @param middle the ellipse's middle, pixels
 * @param diameterMm the coin's diameter
 */
public record CoinScale(double majorPx, double minorPx, double majorRadians, PixelPoint middle, double diameterMm) {
    /** A mark farther from the ellipse than this share of its radius there is not on the rim. Judgement. */
    private static final double OFF_RIM = 0.15;

    /** A column of the fit that keeps no more than this share of its length says nothing of its own. */
    private static final double SINGULAR = 1e-9;

    /**
     * The scale of a coin whose rim was marked.
     *
     * @param rim 5 points or more all round the rim, pixels
     * @return empty if no ellipse goes through them
     */
    public static Optional<CoinScale> ofRim(List<PixelPoint> rim, double diameterMm) {
        if (rim.size() < Coin.MIN_POINTS || !(diameterMm > 0)) {
            return Optional.empty();
        }
        double mx = rim.stream().mapToDouble(PixelPoint::x).average().orElse(0);
        double my = rim.stream().mapToDouble(PixelPoint::y).average().orElse(0);
        double unit = rim.stream()
                .mapToDouble(p -> Math.hypot(p.x() - mx, p.y() - my))
                .average()
                .orElse(0);
        if (unit == 0) {
            return Optional.empty();
        }
        double[][] rows = rim.stream()
                .map(p -> row((p.x() - mx) / unit, (p.y() - my) / unit))
                .toArray(double[][]::new);
        return leastSquares(rows).flatMap(conic -> axes(conic)
                .map(axes -> new CoinScale(
                        axes[0] * unit,
                        axes[1] * unit,
                        (Math.atan2(conic[1], conic[0] - conic[2]) + Math.PI) / 2,
                        new PixelPoint(mx + axes[2] * unit, my + axes[3] * unit),
                        diameterMm)));
    }

    /**
     * What each row must be multiplied by to give 1, as nearly as can be; empty if the rows leave that open.
     * <p>Source: G. H. Golub, C. F. Van Loan, Matrix Computations, section 5.2, modified Gram-Schmidt; from memory.
     */
    private static Optional<double[]> leastSquares(double[][] rows) {
        int unknowns = rows[0].length;
        double[][] left = new double[unknowns][];
        double[] right = new double[unknowns];
        double[][] columns = IntStream.rangeClosed(0, unknowns)
                .mapToObj(j -> Arrays.stream(rows)
                        .mapToDouble(row -> j < unknowns ? row[j] : 1)
                        .toArray())
                .toArray(double[][]::new);
        for (int j = 0; j < unknowns; j++) {
            left[j] = new double[unknowns];
            double before = Math.sqrt(dot(rows, j));
            double length = Math.sqrt(dot(columns[j], columns[j]));
            if (length <= SINGULAR * before) {
                return Optional.empty();
            }
            left[j][j] = length;
            for (int k = j + 1; k <= unknowns; k++) {
                double along = dot(columns[j], columns[k]) / length;
                for (int i = 0; i < rows.length; i++) {
                    columns[k][i] -= along * columns[j][i] / length;
                }
                if (k < unknowns) {
                    left[j][k] = along;
                } else {
                    right[j] = along;
                }
            }
        }
        for (int j = unknowns - 1; j >= 0; j--) {
            for (int k = j + 1; k < unknowns; k++) {
                right[j] -= left[j][k] * right[k];
            }
            right[j] /= left[j][j];
        }
        return Optional.of(right);
    }

    private static double dot(double[] a, double[] b) {
        return IntStream.range(0, a.length).mapToDouble(i -> a[i] * b[i]).sum();
    }

    private static double dot(double[][] rows, int column) {
        return Arrays.stream(rows).mapToDouble(row -> row[column] * row[column]).sum();
    }

    private static double[] row(double x, double y) {
        return new double[] {x * x, x * y, y * y, x, y};
    }

    /** Half axes of a conic, long one first, then its middle; empty if it is no ellipse. */
    private static Optional<double[]> axes(double[] q) {
        double discriminant = 4 * q[0] * q[2] - q[1] * q[1];
        if (discriminant <= 0) {
            return Optional.empty();
        }
        double cx = (q[1] * q[4] - 2 * q[2] * q[3]) / discriminant;
        double cy = (q[1] * q[3] - 2 * q[0] * q[4]) / discriminant;
        double level = 1 + q[0] * cx * cx + q[1] * cx * cy + q[2] * cy * cy;
        double mean = (q[0] + q[2]) / 2;
        double apart = Math.hypot((q[0] - q[2]) / 2, q[1] / 2);
        double major = level / (mean - apart);
        double minor = level / (mean + apart);
        return major > 0 && minor > 0
                ? Optional.of(new double[] {Math.sqrt(major), Math.sqrt(minor), cx, cy})
                : Optional.empty();
    }

    /** A pixel near the coin in mm on the panel, from the coin's middle along the long and the short axis. */
    public PixelPoint toMm(PixelPoint p) {
        double dx = p.x() - middle.x();
        double dy = p.y() - middle.y();
        double cos = Math.cos(majorRadians);
        double sin = Math.sin(majorRadians);
        double radiusMm = diameterMm / 2;
        return new PixelPoint((dx * cos + dy * sin) * radiusMm / majorPx, (dy * cos - dx * sin) * radiusMm / minorPx);
    }

    /** True if every mark lies near the ellipse, and they stand all round it: no half of the rim is without a mark. */
    public boolean fits(List<PixelPoint> rim) {
        List<PixelPoint> mm = rim.stream().map(this::toMm).toList();
        double radiusMm = diameterMm / 2;
        if (mm.stream().anyMatch(p -> Math.abs(Math.hypot(p.x(), p.y()) - radiusMm) > OFF_RIM * radiusMm)) {
            return false;
        }
        double[] turns =
                mm.stream().mapToDouble(p -> Math.atan2(p.y(), p.x())).sorted().toArray();
        double widest = IntStream.range(1, turns.length)
                .mapToDouble(i -> turns[i] - turns[i - 1])
                .max()
                .orElse(0);
        return Math.max(widest, turns[0] + 2 * Math.PI - turns[turns.length - 1]) < Math.PI;
    }

    /** What a square pixel near the coin is worth, mm2. */
    public double mm2PerPixel() {
        return diameterMm * diameterMm / (4 * majorPx * minorPx);
    }

    /** How far the panel is tilted from the camera there, degrees; 0 is square on. */
    public double tiltDegrees() {
        return Math.toDegrees(Math.acos(Math.min(1, minorPx / majorPx)));
    }

    /** Area of an outline near the coin, mm2. */
    public double areaMm2(Outline outline) {
        double px2 = Shoelace.area(outline.shell());
        for (List<PixelPoint> hole : outline.holes()) {
            px2 -= Shoelace.area(hole);
        }
        return Math.max(0, px2) * mm2PerPixel();
    }
}
