package quarterlight.photo.decode;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.IntBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.leptonica.PIX;
import org.bytedeco.leptonica.global.leptonica;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.header.JpegHeader;
import quarterlight.photo.pixels.ColorProfile;
import quarterlight.photo.pixels.NativeLibraries;
import quarterlight.photo.pixels.PictureBounds;

/**
 * Decodes JPEG at a half, a quarter or an eighth of its size by leptonica and the JPEG library within it, which leave out what a small
 * picture does not need.
 * <p>Native code is given only data whose header was read here and lies within the bounds: baseline, extended or progressive, 8 bits, one or
 * three components. All else, and all where the native part is missing, is left to the decoder that follows.
 */
public final class ScaledJpegDecoder implements PictureDecoder {
    private static final int MIN_REDUCTION = 8;
    private static final int GO_ON_WITH_BAD_DATA = leptonica.L_JPEG_CONTINUE_WITH_BAD_DATA;

    private final PictureBounds bounds;
    private final PictureDecoder otherwise;

    /** @param otherwise decodes what is not given to native code */
    ScaledJpegDecoder(PictureBounds bounds, PictureDecoder otherwise) {
        this.bounds = bounds;
        this.otherwise = otherwise;
    }

    /** Whether the native part is there. */
    public static boolean available() {
        return Native.LOADED;
    }

    private static final class Native {
        static final boolean LOADED = load();

        private static boolean load() {
            if (!NativeLibraries.loads("org.bytedeco.leptonica.global.leptonica")) {
                return false;
            }
            leptonica.setMsgSeverity(leptonica.L_SEVERITY_NONE);
            NativeLibraries.silence();
            return true;
        }
    }

    @Override
    public boolean reads(MediaType type) {
        return type == MediaType.JPEG;
    }

    @Override
    public BufferedImage decode(Path file, MediaType type, int atLeast) throws PictureUnreadable {
        try {
            JpegHeader header = JpegHeader.read(file);
            long bytes = Files.size(file);
            int width = header.width().orElse(0);
            int height = header.height().orElse(0);
            bounds.check(file, width, height, bytes, header.progressive());
            if (!header.plain() || !OffHeapFile.holds(bytes)) {
                return otherwise.decode(file, type, atLeast);
            }
            int reduction = reduction(Math.max(width, height), atLeast);
            BufferedImage picture = decoded(file, bytes, reduction, (long) width * height);
            return header.profile().isPresent()
                    ? new ColorProfile(header.profile().get()).toStandard(Pictures.fitted(picture, atLeast))
                    : picture;
        } catch (IOException | RuntimeException e) {
            throw new PictureUnreadable(file, "its picture data is damaged, or of a kind that cannot be shown", e);
        }
    }

    /** The strongest reduction that leaves the long side at least as long as wanted. */
    static int reduction(int longest, int atLeast) {
        int reduction = MIN_REDUCTION;
        while (reduction > 1 && longest / reduction < atLeast) {
            reduction /= 2;
        }
        return reduction;
    }

    private static BufferedImage decoded(Path file, long bytes, int reduction, long pixels) throws IOException {
        try (OffHeapFile held = OffHeapFile.of(file, bytes)) {
            return decoded(held, reduction, pixels);
        }
    }

    private static BufferedImage decoded(OffHeapFile held, int reduction, long pixels) throws IOException {
        try (IntPointer warnings = new IntPointer(1)) {
            PIX picture =
                    leptonica.pixReadMemJpeg(held.memory(), held.size(), 0, reduction, warnings, GO_ON_WITH_BAD_DATA);
            if (picture == null || picture.isNull()) {
                throw new IOException("the JPEG library refuses it");
            }
            try {
                return copied(picture, pixels);
            } finally {
                leptonica.pixDestroy(picture);
            }
        }
    }

    private static BufferedImage copied(PIX stored, long most) throws IOException {
        int width = stored.w();
        int height = stored.h();
        int depth = stored.d();
        if (width <= 0 || height <= 0 || (long) width * height > most || depth != 32 && depth != 8) {
            throw new IOException("the JPEG library gives " + width + " x " + height + " pixels of " + depth + " bits");
        }
        int wordsPerRow = stored.wpl();
        IntBuffer words = leptonica
                .pixGetData(stored)
                .capacity((long) wordsPerRow * height)
                .asByteBuffer()
                .order(java.nio.ByteOrder.nativeOrder())
                .asIntBuffer();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int[] rgb = ((java.awt.image.DataBufferInt) image.getRaster().getDataBuffer()).getData();
        int[] row = new int[wordsPerRow];
        for (int y = 0; y < height; y++) {
            words.get(y * wordsPerRow, row);
            if (depth == 32) {
                colors(row);
                System.arraycopy(row, 0, rgb, y * width, width);
            } else {
                greys(row, rgb, y * width, width);
            }
        }
        return image;
    }

    /** A word holds one pixel as red, green, blue and a spare byte. */
    private static void colors(int[] words) {
        for (int x = 0; x < words.length; x++) {
            words[x] >>>= 8;
        }
    }

    /** A word holds four grey pixels, the first in the highest byte. */
    private static void greys(int[] words, int[] rgb, int start, int width) {
        for (int x = 0; x < width; x++) {
            rgb[start + x] = (words[x >> 2] >>> 24 - 8 * (x & 3) & 0xFF) * 0x010101;
        }
    }
}
