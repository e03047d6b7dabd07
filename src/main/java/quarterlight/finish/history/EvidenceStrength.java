package quarterlight.finish.history;

/**
 * Words for the weight of evidence on the scale of the ENFSI guideline for evaluative reporting in forensic science
 * (2015): by the likelihood ratio, or its reciprocal where it is below 1. An edge belongs to the lower band (from memory;
 * tested implementations agree from 10 up).
 *
 * @param band which row of the scale
 * @param forRefinishing true if the ratio is above 1: the first proposition is favored
 */
public record EvidenceStrength(Band band, boolean forRefinishing) {
    /** The rows of the scale. */
    public enum Band {
        /** A ratio of 1 to 2: does not support one over the other. */
        NONE(2, "no support for one over the other"),
        WEAK(10, "weak support"),
        MODERATE(100, "moderate support"),
        MODERATELY_STRONG(1_000, "moderately strong support"),
        STRONG(10_000, "strong support"),
        VERY_STRONG(1_000_000, "very strong support"),
        EXTREMELY_STRONG(Double.POSITIVE_INFINITY, "extremely strong support");

        private final double most;
        private final String words;

        Band(double most, String words) {
            this.most = most;
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    private static final double EDGE = 1e-9;

    /** @param log10 log10 of the likelihood ratio, finite */
    public static EvidenceStrength ofLog10(double log10) {
        double weight = Math.abs(log10);
        for (Band band : Band.values()) {
            if (weight <= Math.log10(band.most) + EDGE) {
                return new EvidenceStrength(band, log10 > 0 && band != Band.NONE);
            }
        }
        throw new IllegalArgumentException("a likelihood ratio needs a finite logarithm, not " + log10);
    }

    /** A phrase that names both propositions: "moderate support for refinished over factory finish". */
    public String phrase() {
        if (band == Band.NONE) {
            return "no support for refinished over factory finish or the reverse";
        }
        return band.words()
                + (forRefinishing ? " for refinished over factory finish" : " for factory finish over refinished");
    }
}
