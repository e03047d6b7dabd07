package quarterlight.finish.model;

import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.SignRates;

/** How likely rust and spots without metal of one panel are, by story. */
final class SignFactors {
    private static final int STORIES = LifeStory.values().length;

    private SignFactors() {}

    /** Rust and spots without metal together, in one draw. */
    static double[] others(Panel panel, Draws draws, int draw) {
        double[] rust = rust(panel);
        double[] bare = noMetal(panel, draws.value(draw, JudgedNumber.NO_METAL));
        for (int s = 0; s < STORIES; s++) {
            rust[s] *= bare[s];
        }
        return rust;
    }

    static double[] rust(Panel panel) {
        double[] factors = new double[STORIES];
        for (LifeStory story : LifeStory.values()) {
            factors[story.ordinal()] = panel.rust().isEmpty()
                    ? 1
                    : SignRates.RUST.get(panel.rust().get().ordinal()).get(story.hasFiller() ? 1 : 0);
        }
        return factors;
    }

    /** Over a patch and over a skim some spots besides find no metal. */
    static double[] noMetal(Panel panel, double share) {
        double[] factors = new double[STORIES];
        for (LifeStory story : LifeStory.values()) {
            double factor = Math.pow(share, panel.noMetal());
            if (story == LifeStory.SKIM) {
                factor = Math.pow(share + FixedNumber.NO_METAL_SKIM.value(), panel.noMetal());
            } else if (story == LifeStory.PATCH) {
                double onFiller = FixedNumber.NO_METAL_PATCH.value();
                factor = 0;
                for (int s = 0; s < PanelTable.ON_PATCH.length; s++) {
                    factor += PanelTable.PATCH_SHARE[s]
                            * Math.pow(share + onFiller * PanelTable.ON_PATCH[s], panel.noMetal());
                }
            }
            factors[story.ordinal()] = factor;
        }
        return factors;
    }
}
