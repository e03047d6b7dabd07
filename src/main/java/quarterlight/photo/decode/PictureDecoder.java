package quarterlight.photo.decode;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;

/** The seam behind which a library decodes pictures; the first decoder that reads a format is asked. */
public interface PictureDecoder {
    boolean reads(MediaType type);

    /**
     * Decodes a picture, as stored (not turned; HEIC and AVIF turned as their container says), at reduced size if the library can.
     *
     * @param atLeast the long side wanted, in pixels; the result's long side is at least that, or the picture's own if it is smaller
     * @return pixels in any color space
     * @throws PictureUnreadable if the data is damaged, of a kind that the library cannot read, or claims a size beyond all bounds
     */
    BufferedImage decode(Path file, MediaType type, int atLeast) throws PictureUnreadable;
}
