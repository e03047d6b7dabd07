package quarterlight.page.report;

import java.awt.Point;
import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A picture as a JPEG for print, without any data of the photo it was made from. A picture with much grain is written at a lower
 * quality, so that sixty of them stay within 15 MB.
 */
final class PrintedPicture {
    /** Long side in pixels: over 400 dots an inch on a width of 56 mm, so that a reader can look closer on a screen. */
    static final int LONG_SIDE_PX = 960;

    private static final int MOST_BYTES = 220_000;
    private static final List<Float> QUALITIES = List.of(0.82f, 0.72f, 0.6f, 0.45f, 0.3f);

    private final byte[] jpeg;
    private final int width;
    private final int height;

    private PrintedPicture(byte[] jpeg, int width, int height) {
        this.jpeg = jpeg;
        this.width = width;
        this.height = height;
    }

    /** The file; not to be changed. */
    byte[] jpeg() {
        return jpeg;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** @param image of type INT_RGB */
    static PrintedPicture of(BufferedImage image) {
        byte[] jpeg = new byte[0];
        BufferedImage bytes = image.getType() == BufferedImage.TYPE_INT_RGB ? inBytes(image) : image;
        for (float quality : QUALITIES) {
            jpeg = written(bytes, quality);
            if (jpeg.length <= MOST_BYTES) {
                break;
            }
        }
        return new PrintedPicture(jpeg, image.getWidth(), image.getHeight());
    }

    /** The same pixels, a byte each for red, green and blue, as the writer takes them without asking for them one by one. */
    private static BufferedImage inBytes(BufferedImage image) {
        int width = image.getWidth();
        int[] rgb = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        byte[] bytes = new byte[3 * rgb.length];
        int at = 0;
        for (int pixel : rgb) {
            bytes[at++] = (byte) (pixel >> 16);
            bytes[at++] = (byte) (pixel >> 8);
            bytes[at++] = (byte) pixel;
        }
        WritableRaster raster = Raster.createInterleavedRaster(
                new DataBufferByte(bytes, bytes.length),
                width,
                image.getHeight(),
                3 * width,
                3,
                new int[] {0, 1, 2},
                new Point());
        return new BufferedImage(
                new ComponentColorModel(
                        ColorSpace.getInstance(ColorSpace.CS_sRGB),
                        false,
                        false,
                        Transparency.OPAQUE,
                        DataBuffer.TYPE_BYTE),
                raster,
                false,
                null);
    }

    private static byte[] written(BufferedImage image, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException("writing into memory does not fail", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
