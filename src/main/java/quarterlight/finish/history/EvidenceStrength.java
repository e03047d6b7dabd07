package quarterlight.finish.history;

import static quarterlight.language.Sentences.say;

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
        NONE(2, "finish.evidence-strength.no-support-for-one-over"),
        WEAK(10, "finish.evidence-strength.weak-support"),
        MODERATE(100, "finish.evidence-strength.moderate-support"),
        MODERATELY_STRONG(1_000, "finish.evidence-strength.moderately-strong-support"),
        STRONG(10_000, "finish.evidence-strength.strong-support"),
        VERY_STRONG(1_000_000, "finish.evidence-strength.very-strong-support"),
        EXTREMELY_STRONG(Double.POSITIVE_INFINITY, "finish.evidence-strength.extremely-strong-support");

        private final double most;
        private final String words;

        Band(double most, String words) {
            this.most = most;
            this.words = words;
        }

        public String words() {
            return say(words);
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
            return say("finish.evidence-strength.no-support-for-refinished-over");
        }
        return say(
                forRefinishing
                        ? "finish.evidence-strength.for-refinished-over-factory-finish"
                        : "finish.evidence-strength.for-factory-finish-over-refinished",
                band.words());
    }
}
