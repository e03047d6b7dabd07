package quarterlight.rust;

import static quarterlight.language.Sentences.say;

/**
 * The degree of rusting Ri of ISO 4628-3 from the rusted share of a surface, 0 to 5, by a stated rule.
 * <p>The standard's figures (Ri 1 = 0.05 %, 2 = 0.5 %, 3 = 1 %, 4 = 8 %, 5 = 40 to 50 %) are reference points of
 * pictures, not limits of classes. The rule here: the smallest degree whose figure is not below the share; above 8 % is
 * 5. Source of the figures: ISO 4628-3 (2003, 2016) as tabulated by a coating consultancy. An older national standard
 * used the same letters for other shares, so the standard is always named beside the degree.
 */
public final class RiDegree {
    private static final double[] UP_TO = {0, 0.05, 0.5, 1, 8};
    private static final double ROUNDING = 1 + 1e-9;

    private RiDegree() {}

    /** The rule in words, to be shown wherever the degree is shown. */
    public static String rule() {
        return say("rust.ri-rule");
    }

    /**
     * The degree of a rusted share.
     *
     * @param percent 0 to 100
     */
    public static int of(double percent) {
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException("a rusted share is 0 to 100 %, not " + percent);
        }
        for (int degree = 0; degree < UP_TO.length; degree++) {
            if (percent <= UP_TO[degree] * ROUNDING) {
                return degree;
            }
        }
        return UP_TO.length;
    }
}
