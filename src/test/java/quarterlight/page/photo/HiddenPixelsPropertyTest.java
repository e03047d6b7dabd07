package quarterlight.page.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;

/**
 * Nothing of a hidden region is left: whatever stands inside it on the photo, the picture made for the buyer is the same, also
 * when the photo was made smaller or larger before.
 */
class HiddenPixelsPropertyTest {
    private static final int WIDTH = 160;
    private static final int HEIGHT = 120;

    @ParameterizedTest
    @CsvSource({"1, 1", "0.5, 2", "0.25, 3", "0.37, 4", "0.1, 5", "2, 6", "3.5, 7"})
    void thePictureDoesNotDependOnWhatStandsInside(double scale, long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 6; round++) {
            List<HiddenRegion> regions = List.of(region(random), region(random));
            Area inside = new Area();
            regions.forEach(region -> inside.add(area(region.outline())));
            BufferedImage photo = noise(random);
            BufferedImage other = changedInside(photo, inside, random);
            for (Object way : new Object[] {
                RenderingHints.VALUE_INTERPOLATION_BICUBIC,
                RenderingHints.VALUE_INTERPOLATION_BILINEAR,
                RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR
            }) {
                BufferedImage one = HiddenPixels.of(resized(photo, scale, way), regions, scale);
                BufferedImage two = HiddenPixels.of(resized(other, scale, way), regions, scale);
                assertThat(pixels(one))
                        .as("seed %d, round %d, scale %s, %s", seed, round, scale, way)
                        .isEqualTo(pixels(two));
            }
            BufferedImage one = HiddenPixels.of(averaged(photo, scale), regions, scale);
            BufferedImage two = HiddenPixels.of(averaged(other, scale), regions, scale);
            assertThat(pixels(one))
                    .as("seed %d, round %d, lanczos", seed, round)
                    .isEqualTo(pixels(two));
        }
    }

    /** The picture away from the regions is what it was, and the one given is not touched. */
    @Test
    void theRestStaysAndTheGivenPictureIsNotTouched() {
        Random random = new Random(8);
        BufferedImage photo = noise(random);
        int[] before = pixels(photo);
        HiddenRegion region = square(100, 50, 20);
        BufferedImage hidden = HiddenPixels.of(photo, List.of(region), 1);
        assertThat(pixels(photo)).isEqualTo(before);
        int filled = 0;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                boolean near = x >= 92 && x < 128 && y >= 42 && y < 78;
                boolean within = x >= 100 && x < 120 && y >= 50 && y < 70;
                if (within) {
                    assertThat(hidden.getRGB(x, y)).isEqualTo(HiddenPixels.FILL.getRGB());
                    filled++;
                } else if (!near) {
                    assertThat(hidden.getRGB(x, y)).isEqualTo(photo.getRGB(x, y));
                }
            }
        }
        assertThat(filled).isEqualTo(400);
        assertThat(pixels(HiddenPixels.of(photo, List.of(), 1))).isEqualTo(before);
    }

    @Test
    void aHoleStaysVisibleAwayFromItsEdgeUnlessAnotherRegionCoversIt() {
        BufferedImage photo = noise(new Random(9));
        Outline ring = new Outline(
                square(10, 10, 100).outline().shell(),
                List.of(square(30, 30, 60).outline().shell()));
        HiddenRegion region = new HiddenRegion(new PhotoId(1), ring, Optional.empty());
        assertThat(HiddenPixels.of(photo, List.of(region), 1).getRGB(60, 60)).isEqualTo(photo.getRGB(60, 60));
        assertThat(HiddenPixels.of(photo, List.of(region, square(50, 50, 20)), 1)
                        .getRGB(60, 60))
                .isEqualTo(HiddenPixels.FILL.getRGB());
    }

    private static HiddenRegion square(double x, double y, double side) {
        List<PixelPoint> ring = List.of(
                new PixelPoint(x, y),
                new PixelPoint(x + side, y),
                new PixelPoint(x + side, y + side),
                new PixelPoint(x, y + side));
        return new HiddenRegion(new PhotoId(1), new Outline(ring, List.of()), Optional.empty());
    }

    /** A star-shaped region, thin or stout, that may reach over the edge of the photo. */
    private static HiddenRegion region(Random random) {
        double x = random.nextDouble() * WIDTH;
        double y = random.nextDouble() * HEIGHT;
        int corners = 3 + random.nextInt(9);
        List<PixelPoint> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double r = 2 + random.nextDouble() * 50;
            double angle = 2 * Math.PI * i / corners;
            ring.add(new PixelPoint(x + r * Math.cos(angle), y + r * Math.sin(angle)));
        }
        return new HiddenRegion(new PhotoId(1), new Outline(ring, List.of()), Optional.empty());
    }

    private static Area area(Outline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        path.moveTo(outline.shell().get(0).x(), outline.shell().get(0).y());
        outline.shell().forEach(p -> path.lineTo(p.x(), p.y()));
        path.closePath();
        return new Area(path);
    }

    private static BufferedImage noise(Random random) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                image.setRGB(x, y, random.nextInt(0x1000000));
            }
        }
        return image;
    }

    /** Every pixel of which any part lies in the region gets another color. */
    private static BufferedImage changedInside(BufferedImage photo, Area inside, Random random) {
        BufferedImage other = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        int changed = 0;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                boolean in = inside.intersects(x, y, 1, 1);
                changed += in ? 1 : 0;
                other.setRGB(x, y, in ? random.nextInt(0x1000000) : photo.getRGB(x, y));
            }
        }
        assertThat(changed).as("pixels inside").isPositive();
        return other;
    }

    private static BufferedImage resized(BufferedImage photo, double scale, Object way) {
        int width = Math.max(1, (int) Math.round(WIDTH * scale));
        int height = Math.max(1, (int) Math.round(HEIGHT * scale));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, way);
        g.drawImage(photo, 0, 0, width, height, null);
        g.dispose();
        return image;
    }

    /** Lanczos with three lobes, written down here: the widest filter that the growth allows for. */
    private static BufferedImage averaged(BufferedImage photo, double scale) {
        int width = Math.max(1, (int) Math.round(WIDTH * scale));
        int height = Math.max(1, (int) Math.round(HEIGHT * scale));
        double[][] across = weights(WIDTH, width);
        double[][] down = weights(HEIGHT, height);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int channel = 0; channel < 24; channel += 8) {
            double[][] rows = new double[HEIGHT][width];
            for (int y = 0; y < HEIGHT; y++) {
                for (int x = 0; x < width; x++) {
                    for (int i = 0; i < WIDTH; i++) {
                        if (across[x][i] != 0) {
                            rows[y][x] += across[x][i] * (photo.getRGB(i, y) >> channel & 0xff);
                        }
                    }
                }
            }
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    double sum = 0;
                    for (int i = 0; i < HEIGHT; i++) {
                        sum += down[y][i] * rows[i][x];
                    }
                    int value = (int) Math.round(Math.max(0, Math.min(255, sum)));
                    image.setRGB(x, y, image.getRGB(x, y) & ~(0xff << channel) | value << channel);
                }
            }
        }
        return image;
    }

    private static double[][] weights(int from, int to) {
        double stretch = Math.max(1, (double) from / to);
        double[][] weights = new double[to][from];
        for (int x = 0; x < to; x++) {
            double middle = (x + 0.5) * from / to - 0.5;
            double sum = 0;
            for (int i = 0; i < from; i++) {
                weights[x][i] = lanczos((i - middle) / stretch);
                sum += weights[x][i];
            }
            for (int i = 0; i < from; i++) {
                weights[x][i] /= sum;
            }
        }
        return weights;
    }

    private static double lanczos(double t) {
        if (t == 0) {
            return 1;
        }
        double a = Math.PI * t;
        return Math.abs(t) >= 3 ? 0 : 3 * Math.sin(a) * Math.sin(a / 3) / (a * a);
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
}
