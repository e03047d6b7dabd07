package quarterlight.finish.model;

import java.util.Arrays;
import java.util.List;
import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.finish.number.LifeStory;

/**
 * Chances of the stories before anything was measured, in one draw: of the touched panels of a car, and of a panel of
 * which nothing is known at all.
 */
final class StoryShares {
    static final double[] TOUCHED = {.04, .12, .28, .55};
    static final double[] FILLED_SOME = {.12, .35, .65};
    static final double[] FILLED_WHOLE = {.05, .2, .5};

    private StoryShares() {}

    /** Entry 0 is 1; then shares of the touched without filler; then of those with. */
    static double[] some(Draws draws, int draw) {
        double replaced = draws.value(draw, JudgedNumber.REPLACED);
        double stripped = FixedNumber.STRIPPED_SHARE.value();
        double rest = 1 - replaced - stripped;
        double partly = draws.value(draw, JudgedNumber.PARTLY);
        double levelled = draws.value(draw, JudgedNumber.LEVELLED);
        double skim = FixedNumber.SKIM_SHARE.value();
        return new double[] {
            1,
            rest * (1 - partly) * (1 - levelled),
            rest * (1 - partly) * levelled,
            rest * partly,
            stripped,
            replaced,
            1 - skim,
            skim
        };
    }

    static double[] over() {
        double skim = FixedNumber.SKIM_SHARE_WHOLE.value();
        return new double[] {1, .92, 0, 0, .03, .05, 1 - skim, skim};
    }

    static double[] stripped() {
        double skim = FixedNumber.SKIM_SHARE_WHOLE.value();
        return new double[] {1, .05, 0, 0, .90, .05, 1 - skim, skim};
    }

    /** Priors of the scenarios: as built, some panels, whole car over, whole car stripped; sum 1. */
    static double[] scenarios(Draws draws, int draw) {
        double[] all = {
            FixedNumber.BUILT_PRIOR.value() * Math.exp(draws.value(draw, JudgedNumber.AS_BUILT)),
            FixedNumber.SOME_PRIOR.value(),
            FixedNumber.OVER_PRIOR.value() * Math.exp(draws.value(draw, JudgedNumber.WHOLE_OVER)),
            FixedNumber.STRIPPED_PRIOR.value() * Math.exp(draws.value(draw, JudgedNumber.WHOLE_STRIPPED))
        };
        double sum = all[0] + all[1] + all[2] + all[3];
        for (int n = 0; n < all.length; n++) {
            all[n] /= sum;
        }
        return all;
    }

    /** A chance with its odds times this. */
    static double prone(double chance, double odds) {
        return chance * odds / (1 - chance + chance * odds);
    }

    /** The share of the touched that hold filler, for each of these shares and of these panels. */
    static double[][] filled(double[] shares, List<Panel> panels) {
        return Arrays.stream(shares)
                .mapToObj(share -> panels.stream()
                        .mapToDouble(panel -> prone(share, panel.fillerOdds()))
                        .toArray())
                .toArray(double[][]::new);
    }

    /** Chance of each story of a panel of a car of which nothing is known. */
    static double[] before(Draws draws, int draw, Panel panel) {
        double[] scenarios = scenarios(draws, draw);
        double[] stories = new double[LifeStory.values().length];
        double odds = panel.proneness();
        double filledSome = mean(filled(FILLED_SOME, List.of(panel)));
        double filledWhole = mean(filled(FILLED_WHOLE, List.of(panel)));
        double built = prone(FixedNumber.TOUCHED_AS_BUILT.value(), odds);
        add(stories, scenarios[0], built, filledSome, some(draws, draw));
        for (double touched : TOUCHED) {
            double weight = scenarios[1] / TOUCHED.length;
            add(stories, weight, prone(touched, odds), filledSome, some(draws, draw));
        }
        double whole = 1 - FixedNumber.LEFT_OUT.value();
        add(stories, scenarios[2], whole, filledWhole, over());
        add(stories, scenarios[3], whole, filledWhole, stripped());
        return stories;
    }

    private static void add(double[] stories, double weight, double touched, double filled, double[] shares) {
        for (LifeStory story : LifeStory.values()) {
            double part =
                    story == LifeStory.FACTORY ? 1 - touched : touched * (story.hasFiller() ? filled : 1 - filled);
            stories[story.ordinal()] += weight * part * shares[story.ordinal()];
        }
    }

    private static double mean(double[][] ofOnePanel) {
        return Arrays.stream(ofOnePanel)
                .mapToDouble(share -> share[0])
                .average()
                .orElseThrow();
    }
}
