package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale.Coin;
import quarterlight.visit.annotation.PixelPoint;

/**
 * A coin as the scale of a trace, against the ellipse that a circle becomes when it is turned by one angle, shortened by the
 * cosine of the tilt, turned again and enlarged: written down here, not found by the program.
 */
class CoinTraceTest {
    private static final double DIAMETER_MM = 24.26;
    /** A camera so far away that nothing gets smaller with distance. */
    private static final Lens FAR = new Lens(1e9, new PixelPoint(1500, 1000));

    private static final double WIDTH_MM = 20;
    private static final double HEIGHT_MM = 16;

    /** The panel as a camera far away sees it. */
    private record Sight(double turnDegrees, double tiltDegrees, double axisDegrees, double pxPerMm) {
        PixelPoint px(double xMm, double yMm) {
            double[] p = turned(xMm, yMm, turnDegrees);
            double[] q = turned(p[0], p[1] * Math.cos(Math.toRadians(tiltDegrees)), axisDegrees);
            return new PixelPoint(1500 + pxPerMm * q[0], 1000 + pxPerMm * q[1]);
        }

        private static double[] turned(double x, double y, double degrees) {
            double cos = Math.cos(Math.toRadians(degrees));
            double sin = Math.sin(Math.toRadians(degrees));
            return new double[] {x * cos - y * sin, x * sin + y * cos};
        }

        Coin coin(int marks, UnaryOperator<PixelPoint> hand) {
            List<PixelPoint> rim = new ArrayList<>();
            for (int i = 0; i < marks; i++) {
                double angle = 2 * Math.PI * i / marks;
                rim.add(hand.apply(px(DIAMETER_MM / 2 * Math.cos(angle), DIAMETER_MM / 2 * Math.sin(angle))));
            }
            return new Coin(rim, DIAMETER_MM);
        }

        Outline rectangle(UnaryOperator<PixelPoint> hand) {
            return new Outline(
                    List.of(
                            hand.apply(px(15, 0)),
                            hand.apply(px(15 + WIDTH_MM, 0)),
                            hand.apply(px(15 + WIDTH_MM, HEIGHT_MM)),
                            hand.apply(px(15, HEIGHT_MM))),
                    List.of());
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0, 8, 5", "0, 40, 0, 8, 5", "30, 40, 70, 8, 5", "200, 60, 155, 3, 8", "75, 10, 300, 25, 40"})
    void areasAndLengthsComeOutExactlyWhereTheMarksAreExact(
            double turn, double tilt, double axis, double pxPerMm, int marks) {
        Sight sight = new Sight(turn, tilt, axis, pxPerMm);
        Coin coin = sight.coin(marks, p -> p);
        assertThat(TraceCheck.ofScale(coin)).isEmpty();
        PhotoPlane plane = PhotoPlane.of(coin).orElseThrow();
        assertThat(plane.areaMm2(sight.rectangle(p -> p))).isCloseTo(WIDTH_MM * HEIGHT_MM, within(1e-6));
        PixelPoint a = plane.toMm(sight.px(-4, 7));
        PixelPoint b = plane.toMm(sight.px(26, -33));
        assertThat(Math.hypot(a.x() - b.x(), a.y() - b.y())).isCloseTo(50, within(1e-6));
        MarkedArea marked = MarkedArea.of(sight.rectangle(p -> p), coin, MarkedArea.USUAL_MARK_PX, FAR);
        assertThat(marked.mm2()).isCloseTo(WIDTH_MM * HEIGHT_MM, within(1e-6));
        assertThat(marked.sdMm2()).isPositive();
    }

    @ParameterizedTest
    @CsvSource({"0, 12", "30, 12", "45, 8", "45, 24"})
    void theStatedUncertaintyCoversTheTruthIn90To99Of100Markings(double tilt, int marks) {
        long seed = 20261125;
        Random random = new Random(seed);
        UnaryOperator<PixelPoint> hand = p -> new PixelPoint(
                p.x() + MarkedArea.USUAL_MARK_PX * random.nextGaussian(),
                p.y() + MarkedArea.USUAL_MARK_PX * random.nextGaussian());
        Sight sight = new Sight(20, tilt, 65, 8);
        int covered = 0;
        for (int i = 0; i < 500; i++) {
            MarkedArea area =
                    MarkedArea.of(sight.rectangle(hand), sight.coin(marks, hand), MarkedArea.USUAL_MARK_PX, FAR);
            covered += Math.abs(area.mm2() - WIDTH_MM * HEIGHT_MM) <= 2 * area.sdMm2() ? 1 : 0;
        }
        assertThat(covered / 5.0).as("seed %d", seed).isBetween(90.0, 99.0);
    }

    @Test
    void marksThatMakeNoEllipseAreRefused() {
        Sight sight = new Sight(0, 30, 20, 8);
        List<PixelPoint> all = sight.coin(24, p -> p).rim();
        assertThat(TraceCheck.ofScale(new Coin(all.subList(0, 24), 20))).isEmpty();
        assertThat(TraceCheck.ofScale(new Coin(all.subList(0, 11), 20)).orElseThrow())
                .contains("all round");
        List<PixelPoint> line = List.of(
                new PixelPoint(0, 0),
                new PixelPoint(1, 1),
                new PixelPoint(2, 2),
                new PixelPoint(3, 3),
                new PixelPoint(9, 9));
        assertThat(TraceCheck.ofScale(new Coin(line, 20)).orElseThrow()).contains("(0, 0)");
        PixelPoint same = new PixelPoint(5, 5);
        assertThat(TraceCheck.ofScale(new Coin(List.of(same, same, same, same, same), 20)))
                .isPresent();
        List<PixelPoint> slipped = new ArrayList<>(all);
        slipped.set(3, sight.px(DIAMETER_MM, DIAMETER_MM));
        assertThat(TraceCheck.ofScale(new Coin(slipped, 20))).isPresent();
    }
}
