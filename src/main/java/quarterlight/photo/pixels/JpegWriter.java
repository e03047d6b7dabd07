package quarterlight.photo.pixels;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteOrder;
import java.nio.IntBuffer;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.PointerPointer;
import org.bytedeco.javacpp.SizeTPointer;
import org.bytedeco.leptonica.PIX;
import org.bytedeco.leptonica.global.leptonica;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.decode.ScaledJpegDecoder;

/** Writes JPEG in plain sRGB without a profile, by leptonica and the JPEG library within it, or by the Java platform where that is missing. */
public final class JpegWriter {
    private static final int BITS = 32;

    private JpegWriter() {}

    /** @param quality 1 to 100, on the scale of the JPEG library */
    public static byte[] jpeg(BufferedImage picture, int quality) {
        BufferedImage plain = Pictures.plain(picture);
        return (ScaledJpegDecoder.available() ? byLibrary(plain, quality) : Optional.<byte[]>empty())
                .orElseGet(() -> byPlatform(plain, quality));
    }

    private static Optional<byte[]> byLibrary(BufferedImage picture, int quality) {
        PIX pixels = leptonica.pixCreateNoInit(picture.getWidth(), picture.getHeight(), BITS);
        if (pixels == null || pixels.isNull()) {
            return Optional.empty();
        }
        try (PointerPointer<BytePointer> written = new PointerPointer<>(1);
                SizeTPointer size = new SizeTPointer(1)) {
            fill(pixels, RgbPixels.of(picture));
            if (leptonica.pixWriteMemJpeg(written, size, pixels, quality, 0) != 0) {
                return Optional.empty();
            }
            BytePointer jpeg = written.get(BytePointer.class, 0);
            byte[] bytes = new byte[(int) size.get()];
            jpeg.get(bytes);
            leptonica.lept_free(jpeg);
            return Optional.of(bytes);
        } finally {
            leptonica.pixDestroy(pixels);
        }
    }

    /** A word holds one pixel as red, green, blue and a spare byte; at 32 bits a row has no more words than pixels. */
    private static void fill(PIX pixels, int[] rgb) {
        IntBuffer words = leptonica
                .pixGetData(pixels)
                .capacity(rgb.length)
                .asByteBuffer()
                .order(ByteOrder.nativeOrder())
                .asIntBuffer();
        int[] shifted = new int[rgb.length];
        for (int i = 0; i < rgb.length; i++) {
            shifted[i] = rgb[i] << 8;
        }
        words.put(shifted);
    }

    public static byte[] byPlatform(BufferedImage picture, int quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality / 100f);
            writer.setOutput(out);
            writer.write(null, new IIOImage(picture, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException("writing into memory does not fail", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
