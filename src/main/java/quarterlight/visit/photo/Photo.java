package quarterlight.visit.photo;

import java.util.Objects;
import java.util.Optional;

/**
 * A photo or film of the visit.
 *
 * @param file what intake found; never changes
 * @param setAside why the inspector put it aside, if so
 */
public record Photo(PhotoId id, PhotoFile file, Optional<String> setAside) {
    public Photo {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(setAside, "setAside");
    }
}
