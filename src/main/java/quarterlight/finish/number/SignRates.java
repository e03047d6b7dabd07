package quarterlight.finish.number;

import java.util.List;
import quarterlight.visit.trial.SignKind;

/**
 * The chance that a sign can be seen, by what happened to the panel: an average job, an attentive eye, good light.
 * Judgement from common practice, no source. {@link JudgedNumber#SEEN} and {@link JudgedNumber#FALSE_SIGNS} scale it, and
 * the quality of each job.
 */
public final class SignRates {
    /**
     * One row.
     *
     * @param rates by the order of {@link LifeStory}; for a factory panel the rate of false signs
     * @param ofFactory true for what the factory left and work takes away
     */
    public record Row(SignKind sign, List<Double> rates, boolean ofFactory) {
        public Row {
            rates = List.copyOf(rates);
        }
    }

    /** How much jobs show: careful, usual, coarse; and how many of each. */
    public static final List<Double> QUALITY = List.of(.3, 1.0, 1.6);

    public static final List<Double> QUALITY_SHARE = List.of(.4, .4, .2);

    private static final List<Row> ROWS = List.of(
            row(SignKind.OVERSPRAY, .02, .45, .40, .40, .40, .40, .45, .45),
            row(SignKind.TAPE_EDGE, .0015, .40, .65, .65, .20, .15, .45, .40),
            row(SignKind.SANDING_SCRATCHES, .02, .25, .25, .25, .15, .20, .35, .35),
            row(SignKind.TEXTURE_DIFFERS, .05, .40, .35, .35, .35, .40, .45, .45),
            row(SignKind.COLOR_DIFFERS, .08, .35, .30, .30, .30, .35, .40, .40),
            row(SignKind.RUNS_OR_DIRT, .08, .30, .25, .25, .30, .30, .30, .30),
            row(SignKind.FASTENER_DISTURBED, .06, .25, .15, .15, .30, .60, .40, .40),
            row(SignKind.GAP_OUT_OF_LINE, .10, .15, .15, .15, .20, .45, .40, .40),
            row(SignKind.SEAM_NOT_AS_BUILT, .01, .05, .05, .05, .15, .35, .40, .30),
            row(SignKind.WEAK_MAGNET, .01, .03, .03, .03, .03, .03, .65, .85),
            row(SignKind.RIPPLE, .05, .12, .10, .10, .10, .10, .50, .60),
            row(SignKind.CRACKS_OR_BLISTERS, .08, .20, .12, .12, .15, .10, .35, .35),
            row(SignKind.RUST_BUBBLING, .06, .10, .08, .08, .08, .05, .35, .25),
            kept(SignKind.FACTORY_PRIMER_VISIBLE, .60, .45, .50, .50, .10, .05, .20, .15),
            kept(SignKind.FACTORY_STENCIL, .30, .15, .20, .20, .02, .02, .08, .05));

    /** Factor by rust extent (none, light, moderate, heavy): without filler, with it. Judgement. */
    public static final List<List<Double>> RUST =
            List.of(List.of(.55, .35), List.of(.30, .25), List.of(.10, .22), List.of(.05, .18));

    private SignRates() {}

    /** In the order of {@link SignKind}. */
    public static List<Row> rows() {
        return ROWS;
    }

    private static Row row(SignKind sign, Double... rates) {
        return new Row(sign, List.of(rates), false);
    }

    private static Row kept(SignKind sign, Double... rates) {
        return new Row(sign, List.of(rates), true);
    }
}
