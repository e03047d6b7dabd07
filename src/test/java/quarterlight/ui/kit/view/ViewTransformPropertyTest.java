package quarterlight.ui.kit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws of the photo's place in its frame. */
class ViewTransformPropertyTest {
    private static ViewTransform any(Random random) {
        ViewTransform t = ViewTransform.fit(
                100 + random.nextInt(5000),
                100 + random.nextInt(5000),
                50 + random.nextInt(2000),
                50 + random.nextInt(2000));
        return t.turned(random.nextInt(4));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void fittedAllOfThePhotoIsSeenAndItTouchesTheFrame(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            ViewTransform t = any(random);
            Rectangle2D shown = t.toView()
                    .createTransformedShape(new Rectangle2D.Double(0, 0, t.photoWidth(), t.photoHeight()))
                    .getBounds2D();
            assertThat(shown.getMinX()).as("seed %d", seed).isGreaterThanOrEqualTo(-1e-6);
            assertThat(shown.getMinY()).as("seed %d", seed).isGreaterThanOrEqualTo(-1e-6);
            double room = Math.min(t.viewWidth() - shown.getWidth(), t.viewHeight() - shown.getHeight());
            assertThat(room).as("seed %d", seed).isCloseTo(0, within(1e-6));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void zoomingKeepsWhatLiesUnderThePointer(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            ViewTransform t = any(random);
            double x = t.viewWidth() / 2;
            double y = t.viewHeight() / 2;
            t = t.zoomed(3, x, y);
            Point2D held = t.toPhoto(x, y);
            ViewTransform nearer = t.zoomed(1.3, x, y);
            assertThat(nearer.toPhoto(x, y).distance(held)).as("seed %d", seed).isLessThan(1e-6 * t.photoWidth());
            assertThat(nearer.scale()).isLessThanOrEqualTo(8).isGreaterThanOrEqualTo(t.scale() * 0.999);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8})
    void fourQuartersAreNone(long seed) {
        ViewTransform t = any(new Random(seed));
        assertThat(t.turned(1).turned(1).turned(1).turned(1)).isEqualTo(t);
        assertThat(t.turned(-1)).isEqualTo(t.turned(3));
    }
}
