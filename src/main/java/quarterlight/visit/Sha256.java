package quarterlight.visit;

import java.util.regex.Pattern;

/**
 * A SHA-256 digest.
 *
 * @param hex 64 hexadecimal digits, lower case
 */
public record Sha256(String hex) {
    private static final Pattern FORM = Pattern.compile("[0-9a-f]{64}");
    private static final int PREFIX = 12;

    public Sha256 {
        if (!FORM.matcher(hex).matches()) {
            throw new IllegalArgumentException("a SHA-256 has 64 lower-case hexadecimal digits, not: " + hex);
        }
    }

    /** The first digits, as they name a file in the originals. */
    public String prefix() {
        return hex.substring(0, PREFIX);
    }

    @Override
    public String toString() {
        return hex;
    }
}
