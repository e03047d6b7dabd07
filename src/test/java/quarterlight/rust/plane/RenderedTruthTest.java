package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;

/**
 * Pictures of patches of known area beside a card, rendered under perspective; marks are then found on the pixels alone:
 * the patch by the border of its color, the card by straight lines through its four edges.
 */
class RenderedTruthTest {
    private static final int BODY = 0x2A4D8F;
    private static final int CARD = 0xF0F0F0;
    private static final int RUST = 0x8B4513;
    private static final double W = 85.60;
    private static final double H = 53.98;

    private enum Patch {
        ELLIPSE(Math.PI * 35 * 20) {
            @Override
            boolean holds(double x, double y) {
                return x * x / (35 * 35) + y * y / (20 * 20) <= 1;
            }
        },
        CORNER(60 * 20 + 20 * 30) {
            @Override
            boolean holds(double x, double y) {
                return x >= -30 && x <= 30 && y >= -25 && y <= -5 || x >= -30 && x <= -10 && y > -5 && y <= 25;
            }
        },
        LOBES(Math.PI * 25 * 25 * (1 + 0.3 * 0.3 / 2)) {
            @Override
            boolean holds(double x, double y) {
                return Math.hypot(x, y) <= 25 * (1 + 0.3 * Math.cos(5 * Math.atan2(y, x)));
            }
        };

        private final double mm2;

        Patch(double mm2) {
            this.mm2 = mm2;
        }

        /** True for a point within the patch, mm about its middle. */
        abstract boolean holds(double x, double y);
    }

    static Stream<Arguments> tilted() {
        List<Arguments> cases = new ArrayList<>();
        for (Patch patch : Patch.values()) {
            for (double tilt : new double[] {0, 15, 30, 45}) {
                for (double azimuth : new double[] {70, 215}) {
                    for (double mmPerPx : new double[] {0.22, 0.4}) {
                        cases.add(Arguments.of(patch, tilt, azimuth, mmPerPx));
                    }
                }
            }
        }
        return cases.stream();
    }

    private static int[] render(Scene scene, Patch patch) {
        return scene.render((x, y) -> {
            if (Math.abs(x + 45) <= 40 && Math.abs(y + 25) <= 40 && patch.holds(x + 45, y + 25)) {
                return RUST;
            }
            return Math.abs(x - 45) <= W / 2 && Math.abs(y - 30) <= H / 2 ? CARD : BODY;
        });
    }

    private static Outline outline(List<PixelPoint> ring) {
        return new Outline(ring, List.of());
    }

    @ParameterizedTest(name = "{0}, tilt {1}, azimuth {2}, {3} mm a pixel")
    @MethodSource("tilted")
    void aRectangleGivesTheAreaWithin3Percent(Patch patch, double tilt, double azimuth, double mmPerPx) {
        Scene scene = new Scene(tilt, azimuth, mmPerPx, 1000, 800);
        int[] srgb = render(scene, patch);
        PhotoScale card = new KnownRectangle(CardCorners.of(scene.border(srgb, CARD), scene, 45, 30, W, H), W, H);
        double mm2 = PhotoPlane.of(card).orElseThrow().areaMm2(outline(scene.border(srgb, RUST)));
        double most = tilt == 0 ? 1 : 3;
        assertThat(100 * Math.abs(mm2 / patch.mm2 - 1)).as("percent off").isLessThan(most);
    }

    @Test
    void aKnownLengthFaceOnGivesTheAreaWithin1Percent() {
        for (Patch patch : Patch.values()) {
            for (double mmPerPx : new double[] {0.18, 0.35, 0.5}) {
                Scene scene = new Scene(0, 0, mmPerPx, 1200, 1000);
                int[] srgb = render(scene, patch);
                PixelPoint from = rounded(scene.project(-80, 60));
                PixelPoint to = rounded(scene.project(80, 60));
                PhotoScale ruler = new KnownLength(from, to, 160);
                double mm2 = PhotoPlane.of(ruler).orElseThrow().areaMm2(outline(scene.border(srgb, RUST)));
                assertThat(100 * Math.abs(mm2 / patch.mm2 - 1))
                        .as("%s at %s mm a pixel, percent off", patch, mmPerPx)
                        .isLessThan(1);
            }
        }
    }

    @Test
    void aKnownLengthOnATiltedPanelIsWrongAsSaid() {
        Scene scene = new Scene(45, 180, 0.22, 1000, 800);
        int[] srgb = render(scene, Patch.ELLIPSE);
        PhotoScale ruler = new KnownLength(scene.project(0, -60), scene.project(0, 60), 120);
        double mm2 = PhotoPlane.of(ruler).orElseThrow().areaMm2(outline(scene.border(srgb, RUST)));
        assertThat(mm2 / Patch.ELLIPSE.mm2).isLessThan(0.7);
    }

    @Test
    void aCoinBesideThePatchGivesTheAreaWithin3Percent() {
        for (double tilt : new double[] {0, 20, 40}) {
            Scene scene = new Scene(tilt, 90, 0.12, 1200, 1000);
            double r = 24.26 / 2;
            int[] srgb = scene.render((x, y) ->
                    Math.hypot(x - 20, y) <= r ? CARD : Math.abs(x + 20) <= 10 && Math.abs(y) <= 8 ? RUST : BODY);
            CoinScale coin = CoinScale.ofRim(scene.border(srgb, CARD), 24.26).orElseThrow();
            assertThat(coin.tiltDegrees()).as("tilt").isCloseTo(tilt, within(tilt == 0 ? 6.0 : 2.0));
            assertThat(coin.areaMm2(outline(scene.border(srgb, RUST))) / 320).isCloseTo(1, within(0.03));
        }
    }

    private static PixelPoint rounded(PixelPoint p) {
        return new PixelPoint(Math.round(p.x()), Math.round(p.y()));
    }
}
