package quarterlight.rust.plane;

import java.util.ArrayList;
import java.util.List;
import quarterlight.visit.annotation.PixelPoint;

/** Corners of a bright rectangle found on the border of its pixels: four lines by least squares, and where they meet. */
final class CardCorners {
    /** Border points within this share of a side from its ends are left out. */
    private static final double ENDS = 0.1;

    private CardCorners() {}

    /**
     * @param border along the pixel edges of the rectangle
     * @param scene tells only which border point belongs to which side
     */
    static List<PixelPoint> of(List<PixelPoint> border, Scene scene, double cx, double cy, double w, double h) {
        PixelPoint[] rough = {
            scene.project(cx - w / 2, cy - h / 2),
            scene.project(cx + w / 2, cy - h / 2),
            scene.project(cx + w / 2, cy + h / 2),
            scene.project(cx - w / 2, cy + h / 2)
        };
        double[][] lines = new double[4][];
        for (int side = 0; side < 4; side++) {
            lines[side] = line(along(border, rough[side], rough[(side + 1) % 4]));
        }
        List<PixelPoint> corners = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            corners.add(meet(lines[(corner + 3) % 4], lines[corner]));
        }
        return corners;
    }

    /** Middles of the pixel edges of the border that lie along a side. */
    private static List<PixelPoint> along(List<PixelPoint> border, PixelPoint a, PixelPoint b) {
        double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
        double ux = (b.x() - a.x()) / length;
        double uy = (b.y() - a.y()) / length;
        List<PixelPoint> found = new ArrayList<>();
        for (int i = 0; i < border.size(); i++) {
            PixelPoint p = border.get(i);
            PixelPoint q = border.get((i + 1) % border.size());
            double x = (p.x() + q.x()) / 2 - a.x();
            double y = (p.y() + q.y()) / 2 - a.y();
            double t = (x * ux + y * uy) / length;
            if (t > ENDS && t < 1 - ENDS && Math.abs(y * ux - x * uy) < 3) {
                found.add(new PixelPoint(x + a.x(), y + a.y()));
            }
        }
        return found;
    }

    /** The line n . p = c through points by total least squares: nx, ny, c. */
    private static double[] line(List<PixelPoint> points) {
        double mx = points.stream().mapToDouble(PixelPoint::x).average().orElseThrow();
        double my = points.stream().mapToDouble(PixelPoint::y).average().orElseThrow();
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (PixelPoint p : points) {
            xx += (p.x() - mx) * (p.x() - mx);
            xy += (p.x() - mx) * (p.y() - my);
            yy += (p.y() - my) * (p.y() - my);
        }
        double angle = Math.atan2(2 * xy, xx - yy) / 2;
        double nx = -Math.sin(angle);
        double ny = Math.cos(angle);
        return new double[] {nx, ny, nx * mx + ny * my};
    }

    private static PixelPoint meet(double[] a, double[] b) {
        double det = a[0] * b[1] - a[1] * b[0];
        return new PixelPoint((a[2] * b[1] - a[1] * b[2]) / det, (a[0] * b[2] - a[2] * b[0]) / det);
    }
}
