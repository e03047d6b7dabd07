package quarterlight.photo.decode;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.exif.EmbeddedPicture;

/** Of a camera's own format the JPEG that the camera put into it, by the decoder for JPEG. */
final class EmbeddedDecoder implements PictureDecoder {
    private final PictureDecoder jpeg;

    EmbeddedDecoder(PictureDecoder jpeg) {
        this.jpeg = jpeg;
    }

    @Override
    public boolean reads(MediaType type) {
        return type.isRaw();
    }

    @Override
    public BufferedImage decode(Path file, MediaType type, int atLeast) throws PictureUnreadable {
        try {
            Path copy = Files.createTempFile("quarterlight-embedded", ".jpg");
            try {
                if (!EmbeddedPicture.extract(file, type, copy)) {
                    throw new PictureUnreadable(file, "it holds no picture that can be shown");
                }
                return jpeg.decode(copy, MediaType.JPEG, atLeast);
            } finally {
                Files.deleteIfExists(copy);
            }
        } catch (IOException e) {
            throw new PictureUnreadable(file, "its data is damaged", e);
        }
    }
}
