package quarterlight.capture;

/**
 * A picture's 64-bit difference hash: in a grid of 9 x 8 means, a bit is 1 where the right neighbor is brighter. Row by row, the first
 * bit is the highest.
 * <p>Source: Krawetz, "Kind of like that" (dHash); distances 0 the same, 1 to 10 a variation, above 10 another picture. Other programs turn the sense of the
 * bits or scale otherwise, so values are comparable among themselves only. Identity is told by SHA-256, never by this hash.
 */
public record DifferenceHash(long bits) {
    private static final int COLUMNS = 9;
    private static final int ROWS = 8;

    public static DifferenceHash of(GreyPicture picture) {
        double[] means = picture.means(COLUMNS, ROWS);
        long bits = 0;
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column + 1 < COLUMNS; column++) {
                int at = row * COLUMNS + column;
                bits = bits << 1 | (means[at + 1] > means[at] ? 1 : 0);
            }
        }
        return new DifferenceHash(bits);
    }

    /** How many of the 64 bits differ. */
    public int distance(DifferenceHash other) {
        return Long.bitCount(bits ^ other.bits);
    }
}
