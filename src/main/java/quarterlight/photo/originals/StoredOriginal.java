package quarterlight.photo.originals;

import java.util.Objects;
import quarterlight.visit.photo.Sha256;

/**
 * A file that lies in the originals, byte for byte as it came.
 *
 * @param name its name when it came, without folders
 * @param stored its path within the visit folder, with {@code /}
 */
public record StoredOriginal(String name, String stored, Sha256 sha256, long bytes) {
    public StoredOriginal {
        Objects.requireNonNull(sha256, "sha256");
    }
}
