package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;

class FreehandTest {
    /** A hand goes round a patch of 150 pixels about in 600 steps, shaking by half a pixel. */
    private static List<PixelPoint> round(long seed) {
        Random random = new Random(seed);
        List<PixelPoint> line = new ArrayList<>();
        for (int i = 0; i < 600; i++) {
            double angle = 2 * Math.PI * i / 600;
            double r = 150 + 20 * Math.sin(3 * angle) + random.nextGaussian() / 2;
            line.add(new PixelPoint(300 + r * Math.cos(angle), 300 + r * Math.sin(angle)));
        }
        return line;
    }

    @Test
    void theRingHasFewPointsAndStaysWithinTheToleranceOfTheLine() {
        for (long seed = 1; seed <= 5; seed++) {
            List<PixelPoint> line = round(seed);
            List<PixelPoint> ring = Freehand.thinned(line, 1.5);
            assertThat(ring.size()).as("seed %d", seed).isBetween(12, 120);
            var border = new GeometryFactory().createLinearRing(closed(ring));
            for (PixelPoint p : line) {
                double off = border.distance(new GeometryFactory().createPoint(new Coordinate(p.x(), p.y())));
                assertThat(off).as("seed %d", seed).isLessThanOrEqualTo(1.5 + 1e-9);
            }
            assertThat(Shoelace.area(ring) / Shoelace.area(line))
                    .as("seed %d", seed)
                    .isBetween(0.99, 1.01);
            assertThat(TraceCheck.ofOutline(new Outline(ring, List.of())))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }

    private static Coordinate[] closed(List<PixelPoint> ring) {
        Coordinate[] all = new Coordinate[ring.size() + 1];
        for (int i = 0; i < all.length; i++) {
            PixelPoint p = ring.get(i % ring.size());
            all[i] = new Coordinate(p.x(), p.y());
        }
        return all;
    }

    @Test
    void aLineThatCrossesItselfStaysRefused() {
        List<PixelPoint> eight = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            double t = 2 * Math.PI * (i + 0.3) / 200;
            eight.add(new PixelPoint(300 + 100 * Math.sin(2 * t), 300 + 100 * Math.sin(t)));
        }
        List<PixelPoint> ring = Freehand.thinned(eight, 1.5);
        assertThat(TraceCheck.ofOutline(new Outline(ring, List.of())).orElseThrow())
                .contains("crosses");
    }

    @Test
    void aDotIsNoRing() {
        assertThat(Freehand.thinned(List.of(new PixelPoint(5, 5), new PixelPoint(6, 5)), 1))
                .hasSize(2);
    }
}
