package quarterlight.photo.decode;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.paper.PaperFile;

/** Of a paper its first page. */
final class PaperDecoder implements PictureDecoder {
    @Override
    public boolean reads(MediaType type) {
        return type == MediaType.PDF;
    }

    @Override
    public BufferedImage decode(Path file, MediaType type, int atLeast) throws PictureUnreadable {
        try (PaperFile paper = PaperFile.open(file)) {
            return paper.page(1, atLeast);
        }
    }
}
