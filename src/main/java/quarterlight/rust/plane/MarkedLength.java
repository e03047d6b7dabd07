package quarterlight.rust.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;

/**
 * The length of a line on the panel with what the hand that marked it leaves open. Immutable.
 * <p>As for {@link MarkedArea}, every mark (two ends, and those of the scale) is taken to be off by a normal error of
 * {@code markPx} in x and in y, each on its own, and carried to the length by central differences (first order; GUM, JCGM
 * 100:2008, section 5.1). A tilt that the scale cannot see is added ({@link UnseenTilt}). Lens, bend and a line that lies in another plane than the scale are not in it.
 *
 * @param mm length on the panel
 * @param sdMm its standard deviation from the marking and the unseen tilt
 */
public record MarkedLength(double mm, double sdMm) {
    private static final double STEP_PX = 0.25;

    /** The length between two points by a scale on the same photo; empty if the scale cannot be used there. */
    public static Optional<MarkedLength> of(PixelPoint from, PixelPoint to, PhotoScale scale, double markPx) {
        List<PixelPoint> marks = new ArrayList<>(List.of(from, to));
        marks.addAll(scale.marks());
        Optional<Double> mm = mm(marks, scale);
        if (mm.isEmpty() || TraceCheck.ofScale(scale).isPresent()) {
            return Optional.empty();
        }
        double slopes2 = 0;
        for (int i = 0; i < marks.size(); i++) {
            double byX = slope(marks, i, STEP_PX, 0, scale);
            double byY = slope(marks, i, 0, STEP_PX, scale);
            slopes2 += byX * byX + byY * byY;
        }
        double tilt = mm.get() * UnseenTilt.ofLength(from, to, scale, Lens.ofMarks(marks));
        return Optional.of(new MarkedLength(mm.get(), Math.hypot(markPx * Math.sqrt(slopes2), tilt)));
    }

    /** How far the length moves with one mark, mm per pixel; infinite where the scale fails beside the mark. */
    private static double slope(List<PixelPoint> marks, int mark, double dx, double dy, PhotoScale scale) {
        Optional<Double> plus = mm(moved(marks, mark, dx, dy), scale);
        Optional<Double> minus = mm(moved(marks, mark, -dx, -dy), scale);
        return plus.isPresent() && minus.isPresent()
                ? (plus.get() - minus.get()) / (2 * STEP_PX)
                : Double.POSITIVE_INFINITY;
    }

    /** The length between the first two marks by the scale at the others. */
    private static Optional<Double> mm(List<PixelPoint> marks, PhotoScale scale) {
        return PhotoPlane.of(scale.at(marks.subList(2, marks.size())))
                .filter(plane -> plane.sees(marks.get(0)) && plane.sees(marks.get(1)))
                .map(plane -> {
                    PixelPoint a = plane.toMm(marks.get(0));
                    PixelPoint b = plane.toMm(marks.get(1));
                    return Math.hypot(a.x() - b.x(), a.y() - b.y());
                });
    }

    private static List<PixelPoint> moved(List<PixelPoint> marks, int mark, double dx, double dy) {
        List<PixelPoint> moved = new ArrayList<>(marks);
        PixelPoint p = marks.get(mark);
        moved.set(mark, new PixelPoint(p.x() + dx, p.y() + dy));
        return moved;
    }
}
