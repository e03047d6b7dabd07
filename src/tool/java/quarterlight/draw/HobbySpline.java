package quarterlight.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;

/**
 * A smooth curve through given points, bending as little as it can.
 *
 * <p>Source: J. D. Hobby, "Smooth, easy to compute interpolating splines", Discrete and Computational Geometry 1 (1986),
 * with tension 1 and end curl 1 (the choice of METAFONT); formulas from memory, checked by the test that four points of
 * a circle give a circle to 0.03 % of its radius. Flattened to chords that leave the curve by at most 0.1 mm.
 */
final class HobbySpline {
    private static final double MAX_SAG_MM = 0.1;

    private HobbySpline() {}

    /**
     * @param points at least two, in mm, no two neighbors equal
     * @param start direction at the first point in radians, counterclockwise with y up, if it is given
     * @param end direction at the last point
     * @return the flattened curve, first and last point included
     */
    static List<Coordinate> open(List<Coordinate> points, OptionalDouble start, OptionalDouble end) {
        int n = points.size() - 1;
        if (n == 1 && start.isEmpty() && end.isEmpty()) {
            return List.copyOf(points);
        }
        double[] length = new double[n];
        double[] angle = new double[n];
        chords(points, n, length, angle);
        double[] psi = new double[n + 1];
        for (int k = 1; k < n; k++) {
            psi[k] = turn(angle[k] - angle[k - 1]);
        }
        double[][] m = new double[n + 1][n + 2];
        for (int k = 1; k < n; k++) {
            m[k][k - 1] = 1 / length[k - 1];
            m[k][k] = 2 / length[k - 1] + 2 / length[k];
            m[k][k + 1] = 1 / length[k];
            m[k][n + 1] = -2 / length[k - 1] * psi[k] - psi[k + 1] / length[k];
        }
        m[0][0] = 1;
        if (start.isPresent()) {
            m[0][n + 1] = turn(start.getAsDouble() - angle[0]);
        } else {
            m[0][1] = 1;
            m[0][n + 1] = -psi[1];
        }
        m[n][n] = 1;
        if (end.isPresent()) {
            m[n][n + 1] = turn(end.getAsDouble() - angle[n - 1]);
        } else {
            m[n][n - 1] = 1;
        }
        double[] theta = solve(m);
        return flatten(points, theta, psi, n);
    }

    /** @return the flattened closed curve, the first point repeated at the end */
    static List<Coordinate> closed(List<Coordinate> points) {
        int n = points.size();
        List<Coordinate> round = new ArrayList<>(points);
        round.add(points.get(0));
        double[] length = new double[n];
        double[] angle = new double[n];
        chords(round, n, length, angle);
        double[] psi = new double[n + 1];
        for (int k = 0; k < n; k++) {
            psi[k] = turn(angle[k] - angle[(k + n - 1) % n]);
        }
        psi[n] = psi[0];
        double[][] m = new double[n][n + 1];
        for (int k = 0; k < n; k++) {
            int before = (k + n - 1) % n;
            int after = (k + 1) % n;
            m[k][before] += 1 / length[before];
            m[k][k] += 2 / length[before] + 2 / length[k];
            m[k][after] += 1 / length[k];
            m[k][n] = -2 / length[before] * psi[k] - psi[after] / length[k];
        }
        double[] solved = solve(m);
        double[] theta = new double[n + 1];
        System.arraycopy(solved, 0, theta, 0, n);
        theta[n] = solved[0];
        return flatten(round, theta, psi, n);
    }

    private static void chords(List<Coordinate> points, int n, double[] length, double[] angle) {
        for (int k = 0; k < n; k++) {
            Coordinate a = points.get(k);
            Coordinate b = points.get(k + 1);
            length[k] = a.distance(b);
            angle[k] = Math.atan2(b.y - a.y, b.x - a.x);
            if (length[k] == 0) {
                throw new DrawingFault("two neighboring points of a curve are equal: " + a.x + "," + a.y);
            }
        }
    }

    private static List<Coordinate> flatten(List<Coordinate> points, double[] theta, double[] psi, int n) {
        List<Coordinate> out = new ArrayList<>(List.of(points.get(0)));
        for (int k = 0; k < n; k++) {
            double phi = -psi[k + 1] - theta[k + 1];
            Coordinate a = points.get(k);
            Coordinate d = points.get(k + 1);
            Coordinate b = arm(a, d, theta[k], reach(theta[k], phi));
            Coordinate c = arm(d, a, -phi, reach(phi, theta[k]));
            double bend = Math.max(
                    Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y),
                    Math.hypot(b.x - 2 * c.x + d.x, b.y - 2 * c.y + d.y));
            int steps = Math.max(1, (int) Math.ceil(Math.sqrt(0.75 * bend / MAX_SAG_MM)));
            for (int i = 1; i <= steps; i++) {
                out.add(bezier(a, b, c, d, (double) i / steps));
            }
        }
        return out;
    }

    private static Coordinate arm(Coordinate from, Coordinate to, double turn, double reach) {
        double x = to.x - from.x;
        double y = to.y - from.y;
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        return new Coordinate(from.x + reach * (x * cos - y * sin), from.y + reach * (x * sin + y * cos));
    }

    private static double reach(double theta, double phi) {
        double a = Math.sqrt(2)
                * (Math.sin(theta) - Math.sin(phi) / 16)
                * (Math.sin(phi) - Math.sin(theta) / 16)
                * (Math.cos(theta) - Math.cos(phi));
        double root = Math.sqrt(5);
        return (2 + a) / (3 * (1 + (root - 1) / 2 * Math.cos(theta) + (3 - root) / 2 * Math.cos(phi)));
    }

    private static Coordinate bezier(Coordinate a, Coordinate b, Coordinate c, Coordinate d, double t) {
        double s = 1 - t;
        double ka = s * s * s;
        double kb = 3 * s * s * t;
        double kc = 3 * s * t * t;
        double kd = t * t * t;
        return new Coordinate(ka * a.x + kb * b.x + kc * c.x + kd * d.x, ka * a.y + kb * b.y + kc * c.y + kd * d.y);
    }

    private static double turn(double angle) {
        return Math.IEEEremainder(angle, 2 * Math.PI);
    }

    /** Gauss with row exchange; rows are n coefficients and the right side. */
    private static double[] solve(double[][] m) {
        int n = m.length;
        for (int i = 0; i < n; i++) {
            int pivot = i;
            for (int r = i + 1; r < n; r++) {
                if (Math.abs(m[r][i]) > Math.abs(m[pivot][i])) {
                    pivot = r;
                }
            }
            double[] swap = m[i];
            m[i] = m[pivot];
            m[pivot] = swap;
            for (int r = i + 1; r < n; r++) {
                double factor = m[r][i] / m[i][i];
                for (int c = i; c <= n && factor != 0; c++) {
                    m[r][c] -= factor * m[i][c];
                }
            }
        }
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = m[i][n];
            for (int c = i + 1; c < n; c++) {
                sum -= m[i][c] * x[c];
            }
            x[i] = sum / m[i][i];
        }
        return x;
    }
}
