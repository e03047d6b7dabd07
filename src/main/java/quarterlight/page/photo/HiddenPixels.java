package quarterlight.page.photo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;
import java.util.List;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.PixelPoint;

/**
 * Takes hidden regions out of a picture: a flat color stands in their place, and nothing of the pixels is left.
 * <p>A picture that was made smaller or larger mixes neighboring pixels, so a region is grown by the reach of that mixing:
 * three pixels of the picture, or of the photo where the picture is larger (the widest filter in common use, Lanczos with
 * three lobes), half a pixel of the photo for pixels that the outline cuts, and one of the picture for rounding; all of it
 * times the root of 2, since filters work along both axes. A region whose outline crosses itself is hidden with all that it
 * winds round.
 */
public final class HiddenPixels {
    /** The flat color, opaque; the same for every photo, so it tells nothing of what it covers. */
    public static final Color FILL = InkPalette.LIGHT.secondInk();

    private static final double LOBES = 3;
    private static final double CUT = 0.5;
    private static final double ROUNDING = 1;

    private HiddenPixels() {}

    /**
     * A copy of a picture without the regions; the picture itself is not changed.
     *
     * @param picture an upright photo or film frame, whole, at any size
     * @param regions the hidden regions of this photo
     * @param scale pixels of the picture to one pixel of the photo, above 0
     * @return a new picture of the same size in sRGB
     */
    public static BufferedImage of(BufferedImage picture, List<HiddenRegion> regions, double scale) {
        if (!(scale > 0) || !Double.isFinite(scale)) {
            throw new IllegalArgumentException("a scale is above 0, not " + scale);
        }
        int width = picture.getWidth();
        int height = picture.getHeight();
        boolean clear = picture.getColorModel().hasAlpha();
        BufferedImage copy =
                new BufferedImage(width, height, clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        Graphics2D g = copy.createGraphics();
        g.drawImage(picture, 0, 0, null);
        g.dispose();
        byte[] mask = mask(width, height, regions, scale);
        int[] row = new int[width];
        for (int y = 0; y < height; y++) {
            copy.getRGB(0, y, width, 1, row, 0, width);
            for (int x = 0; x < width; x++) {
                row[x] = mask[y * width + x] == 0 ? row[x] : FILL.getRGB();
            }
            copy.setRGB(0, y, width, 1, row, 0, width);
        }
        return copy;
    }

    /** Row by row, 0 where the picture stays. */
    private static byte[] mask(int width, int height, List<HiddenRegion> regions, double scale) {
        byte[] united = new byte[width * height];
        double grown = Math.sqrt(2) * (LOBES * Math.max(1, scale) + CUT * scale + ROUNDING);
        AffineTransform toPicture = AffineTransform.getScaleInstance(scale, scale);
        for (HiddenRegion region : regions) {
            byte[] one = mask(width, height, region, toPicture, (float) (2 * grown));
            for (int i = 0; i < united.length; i++) {
                united[i] |= one[i];
            }
        }
        return united;
    }

    private static byte[] mask(
            int width, int height, HiddenRegion region, AffineTransform toPicture, float strokeWidth) {
        BufferedImage mask = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = mask.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setStroke(new BasicStroke(strokeWidth, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        Path2D shell = path(region.outline().shell(), toPicture);
        g.setColor(Color.WHITE);
        g.fill(shell);
        g.setColor(Color.BLACK);
        List<Path2D> holes = region.outline().holes().stream()
                .map(hole -> path(hole, toPicture))
                .toList();
        holes.forEach(g::fill);
        g.setColor(Color.WHITE);
        g.draw(shell);
        holes.forEach(g::draw);
        g.dispose();
        byte[] bytes = ((DataBufferByte) mask.getRaster().getDataBuffer()).getData();
        return Arrays.copyOf(bytes, bytes.length);
    }

    private static Path2D path(List<PixelPoint> ring, AffineTransform toPicture) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        path.moveTo(ring.get(0).x(), ring.get(0).y());
        ring.subList(1, ring.size()).forEach(p -> path.lineTo(p.x(), p.y()));
        path.closePath();
        path.transform(toPicture);
        return path;
    }
}
