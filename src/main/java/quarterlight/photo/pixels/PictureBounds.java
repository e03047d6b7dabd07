package quarterlight.photo.pixels;

import java.nio.file.Path;
import quarterlight.photo.PictureUnreadable;

/**
 * The sizes that are decoded at all. A header can claim anything; what it claims is checked before memory is asked for.
 *
 * @param mostPixels of a picture that can be decoded row by row
 * @param mostPixelsAtOnce of a picture that must be held whole to decode any of it (progressive JPEG, interlaced PNG, TIFF)
 * @param mostPixelsPerByte a file shorter than this allows cannot hold the picture it claims
 */
public record PictureBounds(long mostPixels, long mostPixelsAtOnce, long mostPixelsPerByte) {
    /** Phones reach 200 million pixels; a flat picture packs some 500 pixels into a byte of JPEG (common practice, no source). */
    public static final PictureBounds USUAL = new PictureBounds(260_000_000, 60_000_000, 20_000);

    public void check(Path file, long width, long height, long bytes, boolean atOnce) throws PictureUnreadable {
        if (width <= 0 || height <= 0) {
            throw new PictureUnreadable(file, "its header gives no size");
        }
        long pixels = width * height;
        long most = atOnce ? mostPixelsAtOnce : mostPixels;
        if (pixels > most) {
            throw new PictureUnreadable(file, "it claims " + width + " x " + height + " pixels, too many to be shown");
        }
        if (pixels > 1_000_000 && pixels / Math.max(1, bytes) > mostPixelsPerByte) {
            throw new PictureUnreadable(
                    file, "it claims " + width + " x " + height + " pixels, but holds only " + bytes + " bytes");
        }
    }
}
