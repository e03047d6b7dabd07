package quarterlight.finish.model;

import java.util.SplittableRandom;
import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.Lattice;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.StoryNumber;

/**
 * What more spots of one panel can be expected to tell of "factory finish or not": the expected fall of the entropy of
 * that question. Stories and spots are drawn from the panel's posterior at the middle of the judged numbers, with the
 * seed of the panel's name; the chances of the stories are taken anew after each spot. What the spots would say of other
 * panels is left out.
 */
public final class NextSpots {
    private static final int[] STEPS = {1, 2, 3, 5, 8};
    private static final int MAX_SPOTS = 8;
    private static final int ROUNDS = 64;
    private static final double ENOUGH = .9;
    private static final double UNCERTAIN = 1e-3;
    private static final double ON_PATCH = StoryNumber.NEXT_ON_PATCH.value();
    private static final double ON_PART = StoryNumber.NEXT_ON_PART.value();
    private static final double STEP = StoryNumber.NEXT_STEP.value();
    private static final double WITHIN = StoryNumber.NEXT_WITHIN.value();

    private NextSpots() {}

    /**
     * @param spots the least of 1, 2, 3, 5, 8 that brings nine tenths of what 8 would bring
     * @param bits expected fall with them
     */
    public record Gain(int spots, double bits) {}

    public static Gain of(CarPosterior car, int index) {
        double[] chances = car.panel(index).all();
        double before = entropy(1 - chances[0]);
        if (before < UNCERTAIN) {
            return new Gain(1, 0);
        }
        Panel panel = car.panels.get(index);
        double level = Math.log(car.level()[0]);
        SplittableRandom random = new SplittableRandom(panel.zone().hashCode());
        double[][] known = new double[LifeStory.values().length][2];
        for (LifeStory story : LifeStory.values()) {
            known[story.ordinal()] = level(story, level, panel);
        }
        double[] after = new double[MAX_SPOTS + 1];
        for (int round = 0; round < ROUNDS; round++) {
            path(chances, known, random, after);
        }
        return enough(before, after);
    }

    /** @param after expected entropy after so many spots */
    static Gain enough(double before, double[] after) {
        double best = before - after[MAX_SPOTS];
        for (int spots : STEPS) {
            double gain = before - after[spots];
            if (gain >= ENOUGH * best) {
                return new Gain(spots, Math.max(0, gain));
            }
        }
        return new Gain(MAX_SPOTS, Math.max(0, best));
    }

    /** Mean and variance of the log level of a story given the panel's own spots, both normal. */
    static double[] level(LifeStory story, double factory, Panel panel) {
        double mil = Math.exp(factory);
        double mean =
                switch (story) {
                    case FACTORY, PARTLY -> factory;
                    case OVER -> Math.log(mil + StoryNumber.NEXT_COAT.value());
                    case LEVELLED ->
                        Math.log(StoryNumber.LEVELLED_LEFT.value() * mil
                                + StoryNumber.LEVELLED_COAT.value() * StoryNumber.NEXT_COAT.value());
                    case STRIPPED -> Math.log(StoryNumber.NEXT_BARE.value());
                    case REPLACED -> Math.log(StoryNumber.NEXT_REPLACED.value());
                    case PATCH -> Math.log(mil + StoryNumber.NEXT_COAT.value());
                    case SKIM -> Math.log(StoryNumber.NEXT_SKIM.value());
                };
        double sd =
                switch (story) {
                    case FACTORY, PARTLY -> StoryNumber.NEXT_FACTORY_SPREAD.value();
                    case OVER, LEVELLED, STRIPPED, REPLACED, PATCH -> StoryNumber.NEXT_JOB_SPREAD.value();
                    case SKIM -> StoryNumber.NEXT_SKIM_SPREAD.value();
                };
        double precision = 1 / (sd * sd);
        double weighted = mean * precision;
        if (!panel.spotsMil().isEmpty()) {
            double each = panel.spotsMil().size() / (WITHIN * WITHIN);
            weighted += panel.median() * each;
            precision += each;
        }
        return new double[] {weighted / precision, 1 / precision};
    }

    /** One walk of spots: adds its share of the entropy left after each, the known level and spread of each story standing in {@code known}. */
    static void path(double[] chances, double[][] known, SplittableRandom random, double[] after) {
        int story = pick(chances, random);
        double level = known[story][0] + Math.sqrt(known[story][1]) * random.nextGaussian();
        double[] now = chances.clone();
        double[][] belief = new double[known.length][];
        for (int s = 0; s < known.length; s++) {
            belief[s] = known[s].clone();
        }
        after[0] += entropy(1 - now[0]) / ROUNDS;
        for (int k = 1; k <= MAX_SPOTS; k++) {
            double y = level + WITHIN * random.nextGaussian();
            if (story == LifeStory.PATCH.ordinal() && random.nextDouble() < ON_PATCH) {
                y = Math.log(Math.exp(level) + FixedNumber.DEPTH_MIL.value() * Math.exp(random.nextGaussian()));
            } else if (story == LifeStory.PARTLY.ordinal() && random.nextDouble() < ON_PART) {
                y += STEP;
            }
            double sum = 0;
            for (int s = 0; s < now.length; s++) {
                now[s] *= likelihood(LifeStory.values()[s], y, belief[s]);
                sum += now[s];
            }
            for (int s = 0; s < now.length; s++) {
                now[s] /= sum;
            }
            after[k] += entropy(1 - now[0]) / ROUNDS;
        }
    }

    /** Predictive density of a spot; the belief about the level moves with it. */
    static double likelihood(LifeStory story, double y, double[] belief) {
        double spread = Math.sqrt(belief[1] + WITHIN * WITHIN);
        double base = Lattice.normal(y, belief[0], spread);
        double density = base;
        if (story == LifeStory.PATCH) {
            density = (1 - ON_PATCH) * base + ON_PATCH * PanelTable.onFiller(y, belief[0]);
        } else if (story == LifeStory.PARTLY) {
            density = (1 - ON_PART) * base + ON_PART * Lattice.normal(y, belief[0] + STEP, spread);
        }
        double precision = 1 / belief[1] + 1 / (WITHIN * WITHIN);
        if (Math.abs(y - belief[0]) < 3 * spread) {
            belief[0] = (belief[0] / belief[1] + y / (WITHIN * WITHIN)) / precision;
            belief[1] = 1 / precision;
        }
        double stray = FixedNumber.STRAY.value();
        return (1 - stray) * density + stray * PanelTable.stray(y, belief[0]);
    }

    private static int pick(double[] chances, SplittableRandom random) {
        double left = random.nextDouble();
        for (int s = 0; s < chances.length; s++) {
            left -= chances[s];
            if (left <= 0) {
                return s;
            }
        }
        return 0;
    }

    /** Entropy of a yes-no question in bits. */
    static double entropy(double p) {
        return p <= 0 || p >= 1 ? 0 : -(p * Math.log(p) + (1 - p) * Math.log(1 - p)) / Math.log(2);
    }
}
