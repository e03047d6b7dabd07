package quarterlight.rust;

/**
 * The grade of rust of ASTM D610 / SSPC-VIS 2 from the rusted share of a surface: 10 (least) to 0 (most).
 * <p>Source: ASTM D610-08 (2012), table 1; the table's limits, not the formula behind them (they differ by rounding). A
 * share at a limit has the better grade: 0.03 % is grade 9.
 */
public final class D610Grade {
    /** Greatest share in percent of grades 10, 9 … 1; above the last is grade 0. */
    private static final double[] UP_TO = {0.01, 0.03, 0.1, 0.3, 1, 3, 10, 16, 33, 50};

    private static final int BEST = 10;

    /** Rounding of a share worked out from areas must not push it over a limit. */
    private static final double ROUNDING = 1 + 1e-9;

    private D610Grade() {}

    /**
     * The grade of a rusted share.
     *
     * @param percent 0 to 100
     */
    public static int of(double percent) {
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException("a rusted share is 0 to 100 %, not " + percent);
        }
        for (int i = 0; i < UP_TO.length; i++) {
            if (percent <= UP_TO[i] * ROUNDING) {
                return BEST - i;
            }
        }
        return 0;
    }
}
