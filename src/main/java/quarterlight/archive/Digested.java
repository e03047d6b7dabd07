package quarterlight.archive;

import java.util.Objects;
import quarterlight.visit.photo.Sha256;

/** How long something is and what its SHA-256 is. */
public record Digested(long bytes, Sha256 sha256) {
    public Digested {
        Objects.requireNonNull(sha256, "sha256");
    }
}
