package quarterlight.rust.plane;

import java.util.ArrayList;
import java.util.List;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;

/**
 * The area of an outline with what the hand that marked it leaves open. Immutable.
 * <p>Every mark (a corner of the outline, an end of the length, a corner of the rectangle, a point of the rim) is taken to be off by a normal
 * error of {@code markPx} in x and in y, each on its own. The errors are propagated to the area by its slope at the marks
 * (first order; GUM, JCGM 100:2008, section 5.1): exact for the outline's own part but for terms in markPx squared, the
 * scale's part by central differences. A tilt that the scale cannot see is added ({@link UnseenTilt}). What is not in it:
 * the bend of the lens and of the panel, a scale that lies in another plane, and a judgement of where rust begins.
 *
 * @param mm2 area on the panel
 * @param outlineSlope root of the summed squared slopes over the outline's marks, mm2 per pixel
 * @param scaleSlopes slope for x and y of each mark of the scale in turn, mm2 per pixel
 * @param markPx standard deviation of a mark in x and in y, pixels
 * @param tiltMm2 standard deviation from a tilt that the scale cannot see, mm2
 */
public record MarkedArea(double mm2, double outlineSlope, List<Double> scaleSlopes, double markPx, double tiltMm2) {
    /**
     * How well a hand hits a point that it sees, in x and in y, pixels of the photo. Judgement: a pixel or two at the
     * magnification in which one draws.
     */
    public static final double USUAL_MARK_PX = 1.5;

    private static final double STEP_PX = 0.25;

    public MarkedArea {
        scaleSlopes = List.copyOf(scaleSlopes);
    }

    /**
     * The area of an outline by the scale on its photo, both of which {@link TraceCheck} lets pass.
     *
     * @throws IllegalArgumentException if the scale's marks lie on one line
     */
    public static MarkedArea of(Outline outline, PhotoScale scale, double markPx, Lens lens) {
        PhotoPlane plane = plane(scale);
        double slope2 = ringSlope2(outline.shell(), plane);
        for (List<PixelPoint> hole : outline.holes()) {
            slope2 += ringSlope2(hole, plane);
        }
        List<Double> scaleSlopes = new ArrayList<>();
        int marks = scale.marks().size();
        for (int i = 0; i < marks; i++) {
            scaleSlopes.add(slope(outline, moved(scale, i, STEP_PX, 0), moved(scale, i, -STEP_PX, 0)));
            scaleSlopes.add(slope(outline, moved(scale, i, 0, STEP_PX), moved(scale, i, 0, -STEP_PX)));
        }
        double mm2 = plane.areaMm2(outline);
        double tilt = UnseenTilt.ofArea(UnseenTilt.middle(outline.shell()), scale, lens);
        return new MarkedArea(mm2, Math.sqrt(slope2), scaleSlopes, markPx, tilt * mm2);
    }

    /** Standard deviation of the area from the marking and from a tilt that the scale cannot see, mm2. */
    public double sdMm2() {
        double scale2 = scaleSlopes.stream().mapToDouble(s -> s * s).sum();
        return Math.hypot(markPx * Math.sqrt(outlineSlope * outlineSlope + scale2), tiltMm2);
    }

    private static PhotoPlane plane(PhotoScale scale) {
        return PhotoPlane.of(scale)
                .orElseThrow(() -> new IllegalArgumentException("the scale's marks lie on one line"));
    }

    private static double slope(Outline outline, PhotoScale plus, PhotoScale minus) {
        return (plane(plus).areaMm2(outline) - plane(minus).areaMm2(outline)) / (2 * STEP_PX);
    }

    /** Sum over the ring's marks of the squared slopes of its area in x and y. */
    private static double ringSlope2(List<PixelPoint> ring, PhotoPlane plane) {
        List<PixelPoint> mm = ring.stream().map(plane::toMm).toList();
        int n = ring.size();
        double sum = 0;
        for (int i = 0; i < n; i++) {
            PixelPoint before = mm.get((i + n - 1) % n);
            PixelPoint after = mm.get((i + 1) % n);
            double byX = (after.y() - before.y()) / 2;
            double byY = (before.x() - after.x()) / 2;
            PixelPoint p = ring.get(i);
            PixelPoint alongX = difference(plane, p, STEP_PX, 0);
            PixelPoint alongY = difference(plane, p, 0, STEP_PX);
            double x = byX * alongX.x() + byY * alongX.y();
            double y = byX * alongY.x() + byY * alongY.y();
            sum += x * x + y * y;
        }
        return sum;
    }

    private static PixelPoint difference(PhotoPlane plane, PixelPoint p, double dx, double dy) {
        PixelPoint plus = plane.toMm(new PixelPoint(p.x() + dx, p.y() + dy));
        PixelPoint minus = plane.toMm(new PixelPoint(p.x() - dx, p.y() - dy));
        return new PixelPoint((plus.x() - minus.x()) / (2 * STEP_PX), (plus.y() - minus.y()) / (2 * STEP_PX));
    }

    private static PhotoScale moved(PhotoScale scale, int mark, double dx, double dy) {
        List<PixelPoint> marks = new ArrayList<>(scale.marks());
        marks.set(mark, moved(marks.get(mark), dx, dy));
        return scale.at(marks);
    }

    private static PixelPoint moved(PixelPoint p, double dx, double dy) {
        return new PixelPoint(p.x() + dx, p.y() + dy);
    }
}
