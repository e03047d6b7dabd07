package quarterlight.ui.rust.draw;

import java.awt.image.BufferedImage;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;
import quarterlight.rust.color.ColorShare;
import quarterlight.rust.color.RustColor;
import quarterlight.ui.kit.look.Palette;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;

/** Counts what looks like rust in a region of a picture, and paints it as a cover for the photo. Runs off the event thread. */
public final class ShareWork {
    private static final int FOUND_ALPHA = 170;
    private static final int LEFT_ALPHA = 130;

    /**
     * What is asked.
     *
     * @param outline in pixels of the photo
     * @param perPhotoPixel pixels of the picture for one of the photo
     * @param left pixels of the picture that were brushed away
     * @param palette colors of the cover
     */
    public record Question(
            BufferedImage picture,
            Outline outline,
            double perPhotoPixel,
            BitSet left,
            double threshold,
            Palette palette) {}

    /**
     * What came of it.
     *
     * @param cover as large as the picture; clear where nothing was found
     * @param found pixels of the picture that look like rust
     */
    public record Answer(Question question, OptionalDouble share, int pixels, BitSet found, BufferedImage cover) {
        /** True if the region holds a pixel of the picture. */
        public boolean isKnown() {
            return share.isPresent();
        }
    }

    private ShareWork() {}

    public static Answer answer(Question question) {
        BufferedImage picture = question.picture();
        int width = picture.getWidth();
        int height = picture.getHeight();
        int[] srgb = picture.getRGB(0, 0, width, height, null, 0, width);
        ColorShare share = ColorShare.of(
                srgb,
                width,
                height,
                scaled(question.outline(), question.perPhotoPixel()),
                question.left(),
                RustColor.V1,
                question.threshold());
        BitSet found = share.mask();
        return new Answer(question, share.share(), share.pixels(), found, cover(width, height, found, question));
    }

    private static BufferedImage cover(int width, int height, BitSet found, Question question) {
        Palette p = question.palette();
        BufferedImage cover = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        int rust = FOUND_ALPHA << 24 | p.accent().getRGB() & 0xFFFFFF;
        int away = LEFT_ALPHA << 24 | p.secondInk().getRGB() & 0xFFFFFF;
        found.stream().forEach(i -> cover.setRGB(i % width, i / width, rust));
        question.left().stream()
                .filter(i -> (i % width + i / width) % 4 < 2)
                .forEach(i -> cover.setRGB(i % width, i / width, away));
        return cover;
    }

    public static Outline scaled(Outline outline, double by) {
        return new Outline(
                scaled(outline.shell(), by),
                outline.holes().stream().map(hole -> scaled(hole, by)).toList());
    }

    public static List<PixelPoint> scaled(List<PixelPoint> ring, double by) {
        return ring.stream().map(p -> new PixelPoint(p.x() * by, p.y() * by)).toList();
    }
}
