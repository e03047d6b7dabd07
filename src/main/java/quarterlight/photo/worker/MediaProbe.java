package quarterlight.photo.worker;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.pixels.Thumbnail;

/**
 * What intake learns of a file by looking at it.
 *
 * @param sharpness of a photo that can be shown
 * @param notes what was odd about its picture, in sentences
 * @param thumbnail JPEG, upright, sRGB; the camera's own small picture where the picture cannot be shown
 */
public record MediaProbe(FileFacts facts, OptionalDouble sharpness, List<String> notes, Optional<Thumbnail> thumbnail) {
    public MediaProbe {
        notes = List.copyOf(notes);
    }
}
