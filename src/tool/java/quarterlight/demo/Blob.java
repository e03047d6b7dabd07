package quarterlight.demo;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Irregular closed outlines about a middle: never crossing themselves, since the radius is a function of the angle. */
final class Blob {
    private Blob() {}

    /** @param uneven 0 a circle, 0.5 very ragged */
    static List<Point2D.Double> ring(
            SplittableRandom random, double x, double y, double radiusX, double radiusY, double uneven, int corners) {
        double[] waves = new double[10];
        double[] shifts = new double[10];
        for (int k = 0; k < waves.length; k++) {
            waves[k] = uneven * random.nextDouble(0.3, 1) / Math.pow(k + 1.5, 0.9);
            shifts[k] = random.nextDouble() * Math.PI * 2;
        }
        List<Point2D.Double> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double a = Math.PI * 2 * i / corners;
            double f = 1;
            for (int k = 0; k < waves.length; k++) {
                f += waves[k] * Math.sin((k + 2) * a + shifts[k]);
            }
            f = Math.max(0.35, f);
            ring.add(new Point2D.Double(x + radiusX * f * Math.cos(a), y + radiusY * f * Math.sin(a)));
        }
        return ring;
    }

    static Path2D path(List<Point2D.Double> ring) {
        Path2D p = new Path2D.Double();
        p.moveTo(ring.get(0).x, ring.get(0).y);
        ring.subList(1, ring.size()).forEach(q -> p.lineTo(q.x, q.y));
        p.closePath();
        return p;
    }

    static Path2D around(SplittableRandom random, double x, double y, double radius, double uneven, int corners) {
        return path(ring(random, x, y, radius, radius, uneven, corners));
    }
}
