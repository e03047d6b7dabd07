package quarterlight.photo.pixels;

import java.awt.image.BufferedImage;
import quarterlight.photo.decode.Pictures;

/** A small upright picture as it is kept: JPEG, plain sRGB without a profile; immutable. */
public final class Thumbnail {
    private final byte[] jpeg;

    private Thumbnail(byte[] jpeg) {
        this.jpeg = jpeg;
    }

    public static Thumbnail of(BufferedImage picture) {
        return new Thumbnail(Pictures.jpeg(picture));
    }

    /** One that was made before. */
    public static Thumbnail ofJpeg(byte[] jpeg) {
        return new Thumbnail(jpeg.clone());
    }

    public byte[] jpeg() {
        return jpeg.clone();
    }
}
