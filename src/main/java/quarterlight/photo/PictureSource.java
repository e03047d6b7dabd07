package quarterlight.photo;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * A picture to be decoded.
 *
 * @param held its content, where it lies in memory already
 */
record PictureSource(Path file, Optional<HeldFile> held) {
    PictureSource {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(held, "held");
    }

    static PictureSource of(Path file) {
        return new PictureSource(file, Optional.empty());
    }
}
