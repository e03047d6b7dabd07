package quarterlight.ui.rust.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.rust.OutlineSizes;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;

/** An outline of 200 by 200 pixels about the middle of a picture of 500: its least and greatest size are drawn around that middle. */
class TraceInkTest {
    private static final int SIZE = 500;
    private static final Outline OUTLINE = new Outline(
            List.of(
                    new PixelPoint(150, 150),
                    new PixelPoint(350, 150),
                    new PixelPoint(350, 350),
                    new PixelPoint(150, 350)),
            List.of());

    private static BufferedImage drawn(OutlineSizes sizes) {
        BufferedImage image = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.GRAY);
        g.fillRect(0, 0, SIZE, SIZE);
        new TraceInk(g, 1).sizes(OUTLINE, sizes);
        g.dispose();
        return image;
    }

    /** How far to the left of the middle something is drawn in the rows between 190 and 310, least and greatest. */
    private static int[] reach(BufferedImage image) {
        int least = SIZE;
        int greatest = 0;
        for (int x = 0; x < SIZE / 2; x++) {
            for (int y = 190; y < 310; y++) {
                if ((image.getRGB(x, y) & 0xFFFFFF) != (Color.GRAY.getRGB() & 0xFFFFFF)) {
                    least = Math.min(least, SIZE / 2 - x);
                    greatest = Math.max(greatest, SIZE / 2 - x);
                }
            }
        }
        return new int[] {least, greatest};
    }

    /** An area of 22 % standard deviation: sides of .748 (area .56) and 1.2 (area 1.44) times the outline's. */
    @Test
    void theLeastAndTheGreatestSizeAreDrawnAboutTheMiddle() {
        int[] reach = reach(drawn(new OutlineSizes(.748, 1.2)));
        assertThat(reach[0]).isBetween(71, 76);
        assertThat(reach[1]).isBetween(119, 124);
    }
}
