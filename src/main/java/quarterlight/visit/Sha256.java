package quarterlight.visit;

/**
 * A SHA-256 digest.
 *
 * @param hex 64 hexadecimal digits, lower case
 */
public record Sha256(String hex) {
    private static final int DIGITS = 64;
    private static final int PREFIX = 12;

    public Sha256 {
        if (!isForm(hex)) {
            throw new IllegalArgumentException("a SHA-256 has 64 lower-case hexadecimal digits, not: " + hex);
        }
    }

    /** By hand, since thousands are read when a visit is opened. */
    private static boolean isForm(String hex) {
        for (int i = 0; i < hex.length(); i++) {
            char digit = hex.charAt(i);
            if ((digit < '0' || digit > '9') && (digit < 'a' || digit > 'f')) {
                return false;
            }
        }
        return hex.length() == DIGITS;
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
