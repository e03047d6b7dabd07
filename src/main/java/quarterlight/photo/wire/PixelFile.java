package quarterlight.photo.wire;

import java.awt.image.BufferedImage;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import quarterlight.photo.pixels.RgbPixels;

/** The file through which pixels go from a worker to the program: 0xRRGGBB, row-major, in the computer's byte order. It stays in the system's cache. */
public final class PixelFile {
    private static final int CHUNK_PIXELS = 1 << 18;
    /** More pixels than an array should hold here. */
    private static final long MAX_PIXELS = 300_000_000;

    private PixelFile() {}

    public static void write(Path file, BufferedImage picture) throws IOException {
        int[] pixels = RgbPixels.of(picture);
        ByteBuffer chunk = chunk(pixels.length);
        try (FileChannel out = FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            for (int from = 0; from < pixels.length; from += CHUNK_PIXELS) {
                int count = Math.min(CHUNK_PIXELS, pixels.length - from);
                chunk.clear().limit(count * Integer.BYTES);
                chunk.asIntBuffer().put(pixels, from, count);
                while (chunk.hasRemaining()) {
                    out.write(chunk);
                }
            }
        }
    }

    /** Reads what was written and empties the file. */
    public static BufferedImage read(Path file, int width, int height) throws IOException {
        if (width <= 0 || height <= 0 || (long) width * height > MAX_PIXELS) {
            throw new IOException("a picture of " + width + " x " + height + " pixels");
        }
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int[] pixels = RgbPixels.of(picture);
        ByteBuffer chunk = chunk(pixels.length);
        try (FileChannel in = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            for (int from = 0; from < pixels.length; from += CHUNK_PIXELS) {
                int count = Math.min(CHUNK_PIXELS, pixels.length - from);
                chunk.clear().limit(count * Integer.BYTES);
                while (chunk.hasRemaining()) {
                    if (in.read(chunk) < 0) {
                        throw new EOFException("the pixels are not all there");
                    }
                }
                chunk.flip().order(ByteOrder.nativeOrder()).asIntBuffer().get(pixels, from, count);
            }
            in.truncate(0);
        }
        return picture;
    }

    private static ByteBuffer chunk(int pixels) {
        return ByteBuffer.allocateDirect(Math.min(CHUNK_PIXELS, pixels) * Integer.BYTES)
                .order(ByteOrder.nativeOrder());
    }
}
