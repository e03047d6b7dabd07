package quarterlight.photo.pixels;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.IntBuffer;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVPixFmtDescriptor;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.ffmpeg.global.swscale;
import org.bytedeco.ffmpeg.swscale.SwsContext;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.DoublePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.PointerPointer;

/**
 * Turns a decoded frame into RGB pixels, at reduced size if wanted. Brightness and color differences are converted by the matrix and range that
 * the frame states; where it states none, by ITU-R BT.709 from 720 rows on and BT.601 below, as players commonly do.
 */
public final class FramePixels {
    private static final int BYTES_PER_PIXEL = 4;
    private static final int ALIGNMENT = 16;
    private static final int SPARE_BYTES = 256;
    private static final int UNITY = 1 << 16;
    private static final int HIGH_DEFINITION_ROWS = 720;

    private FramePixels() {}

    /**
     * All of a frame, scaled to the size given.
     *
     * @return INT_RGB, or INT_ARGB if the frame has see-through parts
     */
    public static BufferedImage of(AVFrame frame, int width, int height) throws IOException {
        AVPixFmtDescriptor format = avutil.av_pix_fmt_desc_get(frame.format());
        if (frame.width() <= 0 || frame.height() <= 0 || width <= 0 || height <= 0 || format == null) {
            throw new IOException("a frame without pixels");
        }
        boolean seeThrough = (format.flags() & avutil.AV_PIX_FMT_FLAG_ALPHA) != 0;
        SwsContext scaling = swscale.sws_getContext(
                frame.width(),
                frame.height(),
                frame.format(),
                width,
                height,
                avutil.AV_PIX_FMT_BGRA,
                swscale.SWS_AREA | swscale.SWS_ACCURATE_RND | swscale.SWS_FULL_CHR_H_INT,
                null,
                null,
                (DoublePointer) null);
        if (scaling == null || scaling.isNull()) {
            throw new IOException("its pixels are of a kind that cannot be shown");
        }
        int rowPixels = (width + ALIGNMENT - 1) / ALIGNMENT * ALIGNMENT;
        try (BytePointer pixels = new BytePointer((long) rowPixels * height * BYTES_PER_PIXEL + SPARE_BYTES);
                PointerPointer<BytePointer> planes = new PointerPointer<>(pixels, null, null, null);
                IntPointer strides = new IntPointer(rowPixels * BYTES_PER_PIXEL, 0, 0, 0)) {
            setColors(scaling, frame);
            int rows = swscale.sws_scale(scaling, frame.data(), frame.linesize(), 0, frame.height(), planes, strides);
            if (rows <= 0) {
                throw new IOException("its pixels are of a kind that cannot be shown");
            }
            return copied(pixels, rowPixels, width, height, seeThrough);
        } finally {
            swscale.sws_freeContext(scaling);
        }
    }

    private static void setColors(SwsContext scaling, AVFrame frame) {
        int matrix = frame.colorspace();
        if (matrix == avutil.AVCOL_SPC_UNSPECIFIED || matrix == avutil.AVCOL_SPC_RGB) {
            matrix = frame.height() >= HIGH_DEFINITION_ROWS ? avutil.AVCOL_SPC_BT709 : avutil.AVCOL_SPC_SMPTE170M;
        }
        boolean fullRange = frame.color_range() == avutil.AVCOL_RANGE_JPEG;
        swscale.sws_setColorspaceDetails(
                scaling,
                swscale.sws_getCoefficients(matrix),
                fullRange ? 1 : 0,
                swscale.sws_getCoefficients(avutil.AVCOL_SPC_BT709),
                1,
                0,
                UNITY,
                UNITY);
    }

    private static BufferedImage copied(BytePointer pixels, int rowPixels, int width, int height, boolean seeThrough) {
        BufferedImage image =
                new BufferedImage(width, height, seeThrough ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        int[] rgb = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        IntBuffer words = pixels.asByteBuffer().order(ByteOrder.LITTLE_ENDIAN).asIntBuffer();
        for (int y = 0; y < height; y++) {
            words.get(y * rowPixels, rgb, y * width, width);
        }
        return image;
    }
}
