package quarterlight.visit.photo;

/**
 * A SHA-256 digest.
 *
 * @param hex 64 hexadecimal digits, lower case
 */
public record Sha256(String hex) {
    private static final int DIGITS = 64;
    private static final int PREFIX = 12;

    public Sha256 {
        if (!isDigest(hex)) {
            throw new IllegalArgumentException("a SHA-256 has 64 lower-case hexadecimal digits, not: " + hex);
        }
    }

    /** True for what is written as such a digest. */
    public static boolean isDigest(String hex) {
        if (hex.length() != DIGITS) {
            return false;
        }
        for (int i = 0; i < DIGITS; i++) {
            char letter = hex.charAt(i);
            if ((letter < '0' || letter > '9') && (letter < 'a' || letter > 'f')) {
                return false;
            }
        }
        return true;
    }

    /** The first digits, as they name a file in the originals. */
    public String prefix() {
        return hex.substring(0, PREFIX);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Sha256 digest && digest.hex.equals(hex);
    }

    @Override
    public int hashCode() {
        return hex.hashCode();
    }

    @Override
    public String toString() {
        return hex;
    }
}
