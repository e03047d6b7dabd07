package quarterlight.finish.model;

import java.util.Map;
import quarterlight.visit.SignKind;

/**
 * How likely signs, rust and spots without metal of one panel are, by story, in one draw. On a car refinished whole the
 * jobs are of one quality; else each panel's job has its own, and is averaged over.
 */
final class SignFactors {
    private static final int STORIES = LifeStory.values().length;
    private static final double HIGHEST = .95;

    private SignFactors() {}

    /** Entry s for story s. */
    static double[] of(Panel panel, Draws draws, int draw, boolean wholeCar) {
        double[] factors = signs(panel, draws, draw, wholeCar);
        double[] rust = rust(panel);
        double[] bare = noMetal(panel, draws.value(draw, JudgedNumber.NO_METAL));
        for (int s = 0; s < STORIES; s++) {
            factors[s] *= rust[s] * bare[s];
        }
        return factors;
    }

    static double[] signs(Panel panel, Draws draws, int draw, boolean wholeCar) {
        double[] factors = new double[STORIES];
        for (LifeStory story : LifeStory.values()) {
            boolean factory = story == LifeStory.FACTORY;
            if (factory) {
                factors[0] = product(panel, draws, draw, story, wholeCar, 0);
            } else if (wholeCar) {
                double care = draws.value(draw, JudgedNumber.WHOLE_CAR_CARE);
                factors[story.ordinal()] = product(panel, draws, draw, story, true, care);
            } else {
                for (int q = 0; q < SignRates.QUALITY.length; q++) {
                    factors[story.ordinal()] += SignRates.QUALITY_SHARE[q]
                            * product(panel, draws, draw, story, false, SignRates.QUALITY[q]);
                }
            }
        }
        return factors;
    }

    private static double product(
            Panel panel, Draws draws, int draw, LifeStory story, boolean wholeCar, double quality) {
        double product = 1;
        for (Map.Entry<SignKind, Boolean> sign : panel.signs().entrySet()) {
            double seen = seen(sign.getKey(), draws, draw, story, wholeCar, quality);
            product *= sign.getValue() ? seen : 1 - seen;
        }
        double looked = draws.value(draw, JudgedNumber.SILENCE);
        for (SignKind sign : panel.silent()) {
            product *= 1 - looked * seen(sign, draws, draw, story, wholeCar, quality);
        }
        return product;
    }

    private static double seen(
            SignKind sign, Draws draws, int draw, LifeStory story, boolean wholeCar, double quality) {
        SignRates.Row row = SignRates.rows().get(sign.ordinal());
        double eye = draws.value(draw, JudgedNumber.SEEN);
        double rate = row.rates().get(story.ordinal());
        if (row.ofFactory()) {
            return Math.min(HIGHEST, rate * eye);
        }
        double none = 1 - Math.min(.5, row.rates().get(0) * draws.value(draw, JudgedNumber.FALSE_SIGNS));
        if (story == LifeStory.FACTORY) {
            return 1 - none;
        }
        double contrast = wholeCar ? contrast(sign) : 1;
        return 1 - none * (1 - Math.min(HIGHEST, rate * eye * quality * contrast));
    }

    /** Where the whole car was refinished there is no neighbor to differ from. */
    private static double contrast(SignKind sign) {
        return switch (sign) {
            case TEXTURE_DIFFERS -> FixedNumber.LESS_CONTRAST_TEXTURE.value();
            case COLOR_DIFFERS -> FixedNumber.LESS_CONTRAST_COLOR.value();
            default -> 1;
        };
    }

    static double[] rust(Panel panel) {
        double[] factors = new double[STORIES];
        for (LifeStory story : LifeStory.values()) {
            factors[story.ordinal()] = panel.rust().isEmpty()
                    ? 1
                    : SignRates.RUST[panel.rust().get().ordinal()][story.hasFiller() ? 1 : 0];
        }
        return factors;
    }

    /** Over a patch one spot in ten finds no metal besides; over a skim likewise. */
    static double[] noMetal(Panel panel, double share) {
        double[] factors = new double[STORIES];
        for (LifeStory story : LifeStory.values()) {
            double factor = Math.pow(share, panel.noMetal());
            if (story == LifeStory.SKIM) {
                factor = Math.pow(share + .1, panel.noMetal());
            } else if (story == LifeStory.PATCH) {
                factor = 0;
                for (int s = 0; s < PanelTable.ON_PATCH.length; s++) {
                    factor +=
                            PanelTable.PATCH_SHARE[s] * Math.pow(share + .12 * PanelTable.ON_PATCH[s], panel.noMetal());
                }
            }
            factors[story.ordinal()] = factor;
        }
        return factors;
    }
}
