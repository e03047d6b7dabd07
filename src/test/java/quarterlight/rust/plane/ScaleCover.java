package quarterlight.rust.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;

/**
 * How often the stated error holds: photos of a patch of known area beside a scale are drawn by a pinhole camera of random
 * focal length, distance and direction at one tilt, every mark is off by a normal error, and it is counted how often two
 * standard deviations reach the truth. The camera is written down here and is not the program's.
 */
final class ScaleCover {
    /** What lies beside the patch. */
    enum Kind {
        RULER,
        COIN,
        CARD
    }

    private static final int WIDTH = 4000;
    private static final int HEIGHT = 3000;
    private static final Lens LENS = Lens.usual(WIDTH, HEIGHT);

    private final Random random;
    private final double tilt;
    private double focal;
    private double distance;
    private double azimuth;

    private ScaleCover(double tiltDegrees, Random random) {
        this.tilt = Math.toRadians(tiltDegrees);
        this.random = random;
    }

    /** Of so many photos, in how many the truth lies within two standard deviations. */
    static int covered(Kind kind, double tiltDegrees, int photos, long seed) {
        Random random = new Random(seed);
        int covered = 0;
        for (int i = 0; i < photos; i++) {
            covered += new ScaleCover(tiltDegrees, random).holds(kind) ? 1 : 0;
        }
        return covered;
    }

    /**
     * Of so many photos of an object, in how many the stated size is caught.
     *
     * @param trueMm the two sides of what lies there
     * @param statedMm the two sides it is said to have
     */
    static int caught(double[] trueMm, double[] statedMm, double tiltDegrees, int photos, long seed) {
        Random random = new Random(seed);
        int caught = 0;
        for (int i = 0; i < photos; i++) {
            ScaleCover photo = new ScaleCover(tiltDegrees, random);
            photo.place(0.1, 0.3);
            KnownRectangle seen = photo.rectangle(new double[] {0, 0}, 2 * Math.PI * random.nextDouble(), trueMm);
            KnownRectangle said = new KnownRectangle(seen.corners(), statedMm[0], statedMm[1]);
            caught += TraceCheck.ofStatedSize(said, LENS).isPresent() ? 1 : 0;
        }
        return caught;
    }

    private void place(double near, double far) {
        focal = 0.8 * WIDTH * Math.exp(0.25 * random.nextGaussian());
        azimuth = 2 * Math.PI * random.nextDouble();
        distance = focal * between(near, far);
    }

    private KnownRectangle rectangle(double[] at, double turn, double[] mm) {
        double across = Math.atan2(mm[1], mm[0]);
        double half = Math.hypot(mm[0], mm[1]) / 2;
        List<PixelPoint> corners = new ArrayList<>();
        for (double angle : new double[] {Math.PI + across, -across, across, Math.PI - across}) {
            corners.add(seen(beside(at, turn + angle, half)));
        }
        return new KnownRectangle(corners, mm[0], mm[1]);
    }

    private boolean holds(Kind kind) {
        place(kind == Kind.COIN ? 0.06 : 0.1, kind == Kind.COIN ? 0.2 : 0.3);
        double size = between(8, 40);
        double[] middle = {15 * random.nextGaussian(), 15 * random.nextGaussian()};
        List<double[]> patch = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            double r = size * (1 + 0.2 * Math.cos(4 * Math.PI * i / 16));
            patch.add(new double[] {
                middle[0] + r * Math.cos(2 * Math.PI * i / 16), middle[1] + r * Math.sin(2 * Math.PI * i / 16)
            });
        }
        double truth = Shoelace.area(
                patch.stream().map(p -> new PixelPoint(p[0], p[1])).toList());
        MarkedArea area = MarkedArea.of(
                new Outline(seen(patch), List.of()), scale(kind, middle, size), MarkedArea.USUAL_MARK_PX, LENS);
        return Math.abs(area.mm2() - truth) <= 2 * area.sdMm2();
    }

    private PhotoScale scale(Kind kind, double[] middle, double size) {
        double turn = 2 * Math.PI * random.nextDouble();
        double gap = between(3, 40) + 1.2 * size;
        return switch (kind) {
            case RULER -> {
                double[] at = beside(middle, turn, gap + 5);
                yield new PhotoScale.KnownLength(
                        seen(beside(at, turn + Math.PI / 2, 75)), seen(beside(at, turn - Math.PI / 2, 75)), 150);
            }
            case COIN -> {
                double[] at = beside(middle, turn, gap + 12.13);
                List<PixelPoint> rim = new ArrayList<>();
                for (int i = 0; i < 12; i++) {
                    rim.add(seen(beside(at, 2 * Math.PI * i / 12, 12.13)));
                }
                yield new PhotoScale.Coin(rim, 24.26);
            }
            case CARD -> rectangle(beside(middle, turn, gap + 43), turn, new double[] {85.60, 53.98});
        };
    }

    private static double[] beside(double[] from, double turn, double mm) {
        return new double[] {from[0] + mm * Math.cos(turn), from[1] + mm * Math.sin(turn)};
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private List<PixelPoint> seen(List<double[]> mm) {
        return mm.stream().map(this::seen).toList();
    }

    /** Where a hand marks a point of the panel. */
    private PixelPoint seen(double[] mm) {
        double cos = Math.cos(azimuth);
        double sin = Math.sin(azimuth);
        double up = mm[0] * cos + mm[1] * sin;
        double across = -mm[0] * sin + mm[1] * cos;
        double depth = distance + up * Math.sin(tilt);
        double x = up * Math.cos(tilt) * cos - across * sin;
        double y = up * Math.cos(tilt) * sin + across * cos;
        return new PixelPoint(
                WIDTH / 2.0 + focal * x / depth + MarkedArea.USUAL_MARK_PX * random.nextGaussian(),
                HEIGHT / 2.0 + focal * y / depth + MarkedArea.USUAL_MARK_PX * random.nextGaussian());
    }
}
