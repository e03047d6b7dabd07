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
        if (hex.length() != DIGITS || !hex.chars().allMatch(Sha256::isDigit)) {
            throw new IllegalArgumentException("a SHA-256 has 64 lower-case hexadecimal digits, not: " + hex);
        }
    }

    private static boolean isDigit(int letter) {
        return letter >= '0' && letter <= '9' || letter >= 'a' && letter <= 'f';
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
