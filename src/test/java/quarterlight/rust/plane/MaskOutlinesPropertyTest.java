package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import quarterlight.visit.annotation.Outline;

/** Outlines of random masks against the pixels themselves, asked one by one of the geometry library. */
class MaskOutlinesPropertyTest {
    private static final int WIDTH = 40;
    private static final int HEIGHT = 30;

    private static BitSet noise(long seed, double share) {
        Random random = new Random(seed);
        BitSet mask = new BitSet();
        for (int i = 0; i < WIDTH * HEIGHT; i++) {
            mask.set(i, random.nextDouble() < share);
        }
        return mask;
    }

    @Test
    void aPixelLiesInExactlyOneOutlineIfItIsInTheMaskAndInNoneElse() {
        for (long seed = 1; seed <= 20; seed++) {
            BitSet mask = noise(seed, seed / 22.0);
            MaskOutlines.Found found = MaskOutlines.of(mask, WIDTH, HEIGHT, 1, 10_000, 0);
            List<Polygon> shapes =
                    found.outlines().stream().map(OutlineShape::of).toList();
            for (int i = 0; i < WIDTH * HEIGHT; i++) {
                int row = i / WIDTH;
                Coordinate middle = new Coordinate(i % WIDTH + 0.5, row + 0.5);
                long holding = shapes.stream()
                        .filter(shape -> SimplePointInAreaLocator.locate(middle, shape) == Location.INTERIOR)
                        .count();
                assertThat(holding).as("seed %d, pixel %d", seed, i).isEqualTo(mask.get(i) ? 1 : 0);
            }
            assertThat(shapes.stream().mapToDouble(Polygon::getArea).sum())
                    .as("seed %d", seed)
                    .isCloseTo(mask.cardinality(), within(1e-9));
            assertThat(found.leftPixels()).isZero();
        }
    }

    @Test
    void everyOutlineCanBeMeasured() {
        for (long seed = 1; seed <= 20; seed++) {
            for (double tolerance : new double[] {0, 0.8}) {
                for (Outline outline : MaskOutlines.of(noise(seed, 0.6), WIDTH, HEIGHT, 12, 60, tolerance)
                        .outlines()) {
                    assertThat(TraceCheck.ofOutline(outline))
                            .as("seed %d, tolerance %s", seed, tolerance)
                            .isEmpty();
                }
            }
        }
    }

    @Test
    void smallGroupsAndThoseBeyondTheMostAreLeftOutAndCounted() {
        BitSet mask = new BitSet();
        mask.set(0, 3);
        mask.set(5 * WIDTH, 5 * WIDTH + 10);
        mask.set(9 * WIDTH, 9 * WIDTH + 20);
        MaskOutlines.Found found = MaskOutlines.of(mask, WIDTH, HEIGHT, 4, 1, 0);
        assertThat(found.outlines()).hasSize(1);
        assertThat(OutlineShape.of(found.outlines().get(0)).getArea()).isEqualTo(20);
        assertThat(found.leftPixels()).isEqualTo(13);
    }

    @Test
    void whatIsEnclosedIsAnInnerRing() {
        BitSet mask = new BitSet();
        mask.set(0, WIDTH * HEIGHT);
        mask.clear(10 * WIDTH + 10, 10 * WIDTH + 15);
        List<Outline> outlines = MaskOutlines.of(mask, WIDTH, HEIGHT, 1, 10, 0).outlines();
        assertThat(outlines).hasSize(1);
        assertThat(outlines.get(0).holes()).hasSize(1);
    }
}
