package quarterlight.photo.decode;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * A picture to be decoded.
 *
 * @param held its content, where it lies in memory already
 */
public record PictureSource(Path file, Optional<HeldFile> held) {
    public PictureSource {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(held, "held");
    }

    static PictureSource of(Path file) {
        return new PictureSource(file, Optional.empty());
    }
}
