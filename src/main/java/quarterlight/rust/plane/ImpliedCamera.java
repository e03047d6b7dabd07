package quarterlight.rust.plane;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;

/**
 * Whether a camera can have seen a rectangle of the stated size where its corners are marked.
 * <p>The map of the rectangle to the photo has columns a, b for its two sides. Through a camera of focal length f whose
 * axis meets the middle of the photo they are perpendicular and equally long in the product (x x' + y y') / f2 + w w'
 * (R. Hartley, A. Zisserman, Multiple View Geometry in Computer Vision, 2nd edition, 2004, section 8.8, from memory). How
 * far they are from that, against what marks off by {@link MarkedArea#USUAL_MARK_PX} and a bend of one in a hundred
 * explain, and how far f is from usual ({@link Lens}), make a chi square; the f that suits best counts. A thing that is
 * tilted by much along a side can still pass for another, since f is not known.
 */
final class ImpliedCamera {
    /** Chi square of two degrees of freedom that one in two hundred and fifty passes. */
    static final double CAUGHT = 11;

    /** One in twenty passes it: what fits no worse may be offered instead. */
    private static final double FITS = 6.0;

    /** Bend of lens and thing, as a share. Judgement. */
    private static final double BEND = 0.01;

    private static final double STEP_PX = 0.5;
    private static final int STEPS = 60;
    private static final double RANGE = 1.5;

    private final double[] at;
    private final List<double[]> moved;
    private final Lens lens;

    private ImpliedCamera(double[] at, List<double[]> moved, Lens lens) {
        this.at = at;
        this.moved = moved;
        this.lens = lens;
    }

    /** A sentence that says that this is no rectangle of the stated size, and what it may be; empty if it can be. */
    static Optional<String> problem(KnownRectangle rectangle, Lens lens) {
        if (misfit(rectangle, lens).orElse(0.0) < CAUGHT) {
            return Optional.empty();
        }
        String size = KnownThing.size(rectangle.widthMm(), rectangle.heightMm());
        return KnownThing.all().stream()
                .filter(thing -> !thing.round())
                .flatMap(
                        thing -> sides(rectangle, thing).stream().map(turned -> new Guess(thing, misfit(turned, lens))))
                .filter(guess -> guess.misfit().isPresent() && guess.misfit().get() < FITS)
                .min(Comparator.comparing(guess -> guess.misfit().get()))
                .map(guess -> say(
                        "rust.scale.would-suit",
                        size,
                        guess.thing().name(),
                        KnownThing.size(guess.thing().widthMm(), guess.thing().heightMm())))
                .or(() -> Optional.of(say("rust.scale.not-seen-so", size)));
    }

    private record Guess(KnownThing thing, Optional<Double> misfit) {}

    private static List<KnownRectangle> sides(KnownRectangle rectangle, KnownThing thing) {
        return List.of(
                new KnownRectangle(rectangle.corners(), thing.widthMm(), thing.heightMm()),
                new KnownRectangle(rectangle.corners(), thing.heightMm(), thing.widthMm()));
    }

    /** The least chi square over all focal lengths; empty if the corners make no plane. */
    static Optional<Double> misfit(KnownRectangle rectangle, Lens lens) {
        List<double[]> moved = new ArrayList<>();
        Optional<double[]> at = map(rectangle, lens, -1, 0, 0);
        for (int corner = 0; corner < 4; corner++) {
            map(rectangle, lens, corner, STEP_PX, 0).ifPresent(moved::add);
            map(rectangle, lens, corner, 0, STEP_PX).ifPresent(moved::add);
        }
        if (at.isEmpty() || moved.size() < 8) {
            return Optional.empty();
        }
        ImpliedCamera camera = new ImpliedCamera(at.get(), moved, lens);
        double least = Double.POSITIVE_INFINITY;
        for (int i = -STEPS; i <= STEPS; i++) {
            least = Math.min(least, camera.chiSquare(RANGE * i / STEPS));
        }
        return Optional.of(least);
    }

    /** From the rectangle in mm to the photo about its middle, one corner moved. */
    private static Optional<double[]> map(KnownRectangle rectangle, Lens lens, int corner, double dx, double dy) {
        double w = rectangle.widthMm();
        double h = rectangle.heightMm();
        List<PixelPoint> mm =
                List.of(new PixelPoint(0, 0), new PixelPoint(w, 0), new PixelPoint(w, h), new PixelPoint(0, h));
        List<PixelPoint> px = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            PixelPoint p = rectangle.corners().get(i);
            px.add(new PixelPoint(
                    p.x() - lens.middle().x() + (i == corner ? dx : 0),
                    p.y() - lens.middle().y() + (i == corner ? dy : 0)));
        }
        return Homography.ofFourPoints(mm, px).map(Homography::rows);
    }

    private double chiSquare(double logFocal) {
        double f = lens.focalPx() * Math.exp(logFocal);
        double[] off = off(at, f);
        double xx = BEND * BEND;
        double yy = BEND * BEND;
        double xy = 0;
        for (double[] other : moved) {
            double[] by = off(other, f);
            double x = (by[0] - off[0]) / STEP_PX * MarkedArea.USUAL_MARK_PX;
            double y = (by[1] - off[1]) / STEP_PX * MarkedArea.USUAL_MARK_PX;
            xx += x * x;
            yy += y * y;
            xy += x * y;
        }
        double squared = (yy * off[0] * off[0] - 2 * xy * off[0] * off[1] + xx * off[1] * off[1]) / (xx * yy - xy * xy);
        return squared + Math.pow(logFocal / Lens.FOCAL_SPREAD, 2);
    }

    /** How far the two sides are from perpendicular, and from equal (logarithm), for a focal length. */
    private static double[] off(double[] h, double f) {
        double aa = product(h, 0, 0, f);
        double bb = product(h, 1, 1, f);
        return new double[] {product(h, 0, 1, f) / Math.sqrt(aa * bb), Math.log(aa / bb) / 2};
    }

    private static double product(double[] h, int a, int b, double f) {
        return (h[a] * h[b] + h[3 + a] * h[3 + b]) / (f * f) + h[6 + a] * h[6 + b];
    }
}
