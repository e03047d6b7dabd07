package quarterlight.store.log;

import java.util.Objects;

/**
 * The end of a chained edit log, which stands for all of it.
 *
 * @param entry number of the last entry
 * @param hash of the last entry, 64 digits
 */
public record LogHead(long entry, String hash) {
    public LogHead {
        Objects.requireNonNull(hash, "hash");
    }

    /** For people: {@code 17 4f0c…}. */
    @Override
    public String toString() {
        return entry + " " + hash;
    }
}
