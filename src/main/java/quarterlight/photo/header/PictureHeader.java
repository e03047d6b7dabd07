package quarterlight.photo.header;

import java.util.List;
import java.util.OptionalInt;

/**
 * What a picture's container says: its size and its Exif blocks.
 *
 * @param width pixels as the decoder gives them
 * @param height pixels as the decoder gives them
 * @param exif TIFF structures
 */
public record PictureHeader(OptionalInt width, OptionalInt height, List<byte[]> exif) {
    static final int MAX_EXIF_BYTES = 16 << 20;
    static final PictureHeader UNREADABLE = new PictureHeader(OptionalInt.empty(), OptionalInt.empty(), List.of());

    public PictureHeader {
        exif = List.copyOf(exif);
    }
}
