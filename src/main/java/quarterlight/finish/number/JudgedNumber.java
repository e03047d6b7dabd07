package quarterlight.finish.number;

import static quarterlight.language.Sentences.say;

import quarterlight.units.Worded;

/**
 * A number of the finish model that nobody knows well: it is integrated over, never fixed. Low and high are its 5th and
 * 95th percentile; the page docs/methods/finish-history.md prints this table, and a test holds both together.
 */
public enum JudgedNumber implements Worded {
    LEVEL_SHIFT(Law.NORMAL, -.15, .15, Source.JUDGEMENT),
    LEVEL_SPREAD(Law.LOG, .24, .46, Source.JUDGEMENT),
    PANEL_SPREAD(Law.LOG, .085, .20, Source.NO_SPREAD),
    WITHIN_SPREAD(Law.LOG, .05, .26, Source.NO_SPREAD),
    HORIZONTAL(Law.NORMAL, -.06, .10, Source.HORIZONTAL),
    COAT(Law.LOG, 3.0, 5.4, Source.COAT),
    COAT_SPREAD(Law.LOG, .22, .55, Source.JUDGEMENT),
    JOB_SPREAD(Law.LOG, .06, .22, Source.JUDGEMENT),
    BARE_COAT(Law.LOG, 4.6, 7.4, Source.COAT),
    NO_METAL(Law.LOGIT, .002, .03, Source.JUDGEMENT),
    SKIM(Law.LOG, 13, 32, Source.FILLER),
    SEEN(Law.LOG, .3, 1.0, Source.JUDGEMENT),
    FALSE_SIGNS(Law.LOG, .4, 2.5, Source.JUDGEMENT),
    WHOLE_CAR_CARE(Law.LOG, .15, 1.3, Source.JUDGEMENT),
    SILENCE(Law.LOGIT, .3, .7, Source.JUDGEMENT),
    AS_BUILT(Law.NORMAL, -.7, .7, Source.JUDGEMENT),
    WHOLE_OVER(Law.NORMAL, -.7, .7, Source.JUDGEMENT),
    WHOLE_STRIPPED(Law.NORMAL, -.7, .7, Source.JUDGEMENT),
    FACTORY_THICK(Law.LOGIT, .01, .06, Source.REWORK),
    LEVELLED(Law.LOGIT, .15, .40, Source.JUDGEMENT),
    PARTLY(Law.LOGIT, .25, .55, Source.JUDGEMENT),
    REPLACED(Law.LOGIT, .08, .25, Source.JUDGEMENT);

    /** The law between low and high. */
    public enum Law {
        /** Normal. */
        NORMAL,
        /** Its logarithm is normal. */
        LOG,
        /** Its log odds are normal. */
        LOGIT
    }

    /** Published texts behind a range; the range itself is judgement throughout. */
    static final class Source {
        static final String JUDGEMENT = "judgement";
        static final String NO_SPREAD = "judgement; no published spread within a car was found";
        static final String HORIZONTAL = "a trade article: horizontal panels are usually thicker; range judgement";
        static final String COAT =
                "paint makers' tips 2014 and 2015: clear 2 to 2.5 mil, base 1, sealer 1; range judgement";
        static final String FILLER = "repair trade: filler at most 1/8 to 1/4 in.; range judgement";
        static final String REWORK =
                "leaflet on total paint thickness, 11 March 2025: up to 350 um by rework in the plant; share judgement";

        private Source() {}
    }

    private static final double NINETY_FIFTH = 1.6448536269514722;

    private final Law law;
    private final double low;
    private final double high;
    private final String source;

    JudgedNumber(Law law, double low, double high, String source) {
        this.law = law;
        this.low = low;
        this.high = high;
        this.source = source;
    }

    public Law law() {
        return law;
    }

    public double low() {
        return low;
    }

    public double high() {
        return high;
    }

    /** What it is, in the language in hand. */
    public String meaning() {
        return say("finish.number." + word());
    }

    public String source() {
        return source;
    }

    /** The value at a standard normal score: low at the 5th percentile, high at the 95th. */
    public double at(double score) {
        double share = score / NINETY_FIFTH;
        return switch (law) {
            case NORMAL -> between(low, high, share);
            case LOG -> Math.exp(between(Math.log(low), Math.log(high), share));
            case LOGIT -> 1 / (1 + Math.exp(-between(logit(low), logit(high), share)));
        };
    }

    private static double between(double a, double b, double share) {
        return (a + b) / 2 + (b - a) / 2 * share;
    }

    private static double logit(double p) {
        return Math.log(p / (1 - p));
    }
}
