package quarterlight.ui.kit.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

/** A faint stamp on unevenly lit metal: five levels darker than what lies around it. */
class ToneTest {
    private static final int WIDTH = 300;
    private static final int HEIGHT = 200;

    private static BufferedImage metal(int stampDarker) {
        BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                boolean stamp = x >= 140 && x < 144 && y >= 80 && y < 120;
                int level = 60 + 100 * x / WIDTH - (stamp ? stampDarker : 0);
                picture.setRGB(x, y, level << 16 | level << 8 | level);
            }
        }
        return picture;
    }

    private static int level(BufferedImage picture, int x, int y) {
        return picture.getRGB(x, y) & 255;
    }

    private static int step(BufferedImage picture) {
        return level(picture, 136, 100) - level(picture, 142, 100);
    }

    @Test
    void recordedIsThePictureItself() {
        BufferedImage picture = metal(5);
        assertThat(Tone.RECORDED.of(picture)).isSameAs(picture);
    }

    @Test
    void edgesBringOutAFaintStampAndLevelTheLight() {
        BufferedImage picture = metal(5);
        BufferedImage edges = Tone.EDGES.of(picture);
        assertThat(step(picture)).as("as recorded").isBetween(2, 5);
        assertThat(step(edges)).as("against what lies around").isGreaterThan(40);
        int light = Math.abs(level(edges, 250, 40) - level(edges, 50, 40));
        assertThat(light).as("light from left to right, 66 levels before").isLessThan(12);
    }

    @Test
    void edgesMakeNoPatternOfAnEvenSurface() {
        BufferedImage even = new BufferedImage(80, 60, BufferedImage.TYPE_INT_RGB);
        BufferedImage edges = Tone.EDGES.of(even);
        assertThat(level(edges, 10, 10)).isEqualTo(level(edges, 70, 50)).isBetween(126, 129);
    }

    @Test
    void stretchedFillsTheRangeAndKeepsTheOrder() {
        BufferedImage stretched = Tone.STRETCHED.of(metal(0));
        assertThat(level(stretched, 0, 0)).isZero();
        assertThat(level(stretched, WIDTH - 1, 0)).isEqualTo(255);
        assertThat(level(stretched, 100, 0)).isLessThan(level(stretched, 200, 0));
    }

    @Test
    void thePictureThatIsShownIsNeverChanged() {
        BufferedImage picture = metal(5);
        int before = level(picture, 142, 100);
        Tone.STRETCHED.of(picture);
        Tone.EDGES.of(picture);
        assertThat(level(picture, 142, 100)).isEqualTo(before);
    }

    @Test
    void roundOfTonesEndsAsRecorded() {
        assertThat(Tone.RECORDED.next().next().next()).isEqualTo(Tone.RECORDED);
    }
}
