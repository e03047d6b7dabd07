package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;

/** Marks every point of a scene anew, each off by a normal error, and asks how often 2 sd cover the true area. */
class MarkedAreaPropertyTest {
    private static final int MARKINGS = 500;
    private static final double MM_ROUND = 30;

    static Stream<Arguments> scenes() {
        List<Arguments> cases = new ArrayList<>();
        for (double tilt : new double[] {0, 30, 45}) {
            for (int corners : new int[] {4, 12, 60}) {
                for (double mmPerPx : new double[] {0.1, 0.4}) {
                    cases.add(Arguments.of(tilt, corners, mmPerPx));
                }
            }
        }
        return cases.stream();
    }

    @ParameterizedTest(name = "tilt {0}, {1} corners, {2} mm a pixel")
    @MethodSource("scenes")
    void theStatedUncertaintyCoversTheTruthIn90To99Of100Markings(double tilt, int corners, double mmPerPx) {
        Scene scene = new Scene(tilt, 40, mmPerPx, 3000, 2000);
        List<PixelPoint> mm = round(corners);
        double truth = Shoelace.area(mm);
        long seed = 20260711L + corners;
        Random random = new Random(seed);
        int byCard = 0;
        for (int i = 0; i < MARKINGS; i++) {
            Outline outline = new Outline(
                    mm.stream()
                            .map(p -> marked(scene, p.x() - 50, p.y(), random))
                            .toList(),
                    List.of());
            PhotoScale card = new KnownRectangle(
                    List.of(
                            marked(scene, 10, -27, random),
                            marked(scene, 95.6, -27, random),
                            marked(scene, 95.6, 26.98, random),
                            marked(scene, 10, 26.98, random)),
                    85.60,
                    53.98);
            byCard += covers(MarkedArea.of(outline, card, MarkedArea.USUAL_MARK_PX, Lens.usual(3000, 2000)), truth);
        }
        assertThat(100.0 * byCard / MARKINGS).as("rectangle, seed %d", seed).isBetween(90.0, 99.0);
    }

    private static int covers(MarkedArea area, double truth) {
        return Math.abs(area.mm2() - truth) <= 2 * area.sdMm2() ? 1 : 0;
    }

    private static PixelPoint marked(Scene scene, double x, double y, Random random) {
        PixelPoint p = scene.project(x, y);
        return new PixelPoint(
                p.x() + MarkedArea.USUAL_MARK_PX * random.nextGaussian(),
                p.y() + MarkedArea.USUAL_MARK_PX * random.nextGaussian());
    }

    private static List<PixelPoint> round(int corners) {
        List<PixelPoint> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double r = MM_ROUND * (1 + 0.2 * Math.cos(2 * angle));
            ring.add(new PixelPoint(r * Math.cos(angle), r * Math.sin(angle)));
        }
        return ring;
    }
}
