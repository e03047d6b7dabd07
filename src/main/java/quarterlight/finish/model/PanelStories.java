package quarterlight.finish.model;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.ProcessModel;
import quarterlight.finish.number.StoryNumber;
import quarterlight.visit.trial.SignKind;

/** The stories of one panel as a {@link CarPosterior} has them, with any part of the evidence left out. Immutable. */
public final class PanelStories {
    private static final int STORIES = CarPosterior.STORIES;
    private static final double LOW = .05;
    private static final double HIGH = .95;

    private final CarPosterior car;
    private final int index;
    private final Panel panel;
    private final double[] refinish;

    PanelStories(CarPosterior car, int index) {
        this.car = car;
        this.index = index;
        this.panel = car.panels.get(index);
        this.refinish = IntStream.range(0, car.sums.length)
                .mapToDouble(d -> 1 - inDraw(d)[0])
                .toArray();
    }

    /** What of the panel's own evidence takes part. */
    private enum Use {
        ALL,
        NO_VALUES,
        NOTHING
    }

    /** Probability of each story, given all evidence. */
    public double[] all() {
        return normalized(mixed(Use.ALL));
    }

    /** The same from the rest of the car alone. */
    public double[] fromTheRest() {
        return normalized(mixed(Use.NOTHING));
    }

    /** Before anything was known of the car. */
    public double[] fromNothing() {
        double[] stories = new double[STORIES];
        for (int d = 0; d < car.sums.length; d++) {
            double[] before = car.before(d, panel);
            for (int s = 0; s < STORIES; s++) {
                stories[s] += before[s] / car.sums.length;
            }
        }
        return normalized(stories);
    }

    public double[] withoutValues() {
        return normalized(mixed(Use.NO_VALUES));
    }

    /** Without one sign, for each that was noted. */
    public Map<SignKind, double[]> withoutEachSign() {
        if (panel.signs().isEmpty()) {
            return Map.of();
        }
        double[][] stories = new double[SignTable.SIGNS][STORIES];
        for (int d = 0; d < car.sums.length; d++) {
            double[] others = SignFactors.others(panel, car.draws, d);
            for (int kind = 0; kind < 2; kind++) {
                double[][] without = new double[SignTable.SIGNS][STORIES];
                car.draws.signs().factors(panel, d, kind == 1, without);
                double[] own = car.sums[d].measured[kind][index];
                for (SignKind sign : panel.signs().keySet()) {
                    for (int s = 0; s < STORIES; s++) {
                        stories[sign.ordinal()][s] += car.scales[d] * own[s] * others[s] * without[sign.ordinal()][s];
                    }
                }
            }
        }
        Map<SignKind, double[]> all = new EnumMap<>(SignKind.class);
        panel.signs().keySet().forEach(sign -> all.put(sign, normalized(stories[sign.ordinal()])));
        return all;
    }

    /**
     * The chance of a patch of filler that all spots miss. The finish beside it is what the story of a patch has: refinished
     * over the earlier finish, left as it was, or sanded level; so the spots speak for it as loudly as they do for those.
     *
     * @param missed share of its places at which the spots miss it, above 0 to 1
     */
    public double unseenPatch(double missed) {
        double unseen = 0;
        double all = 0;
        for (int d = 0; d < car.sums.length; d++) {
            for (int kind = 0; kind < 2; kind++) {
                double[] measured = car.sums[d].measured[kind][index];
                double[] open = car.sums[d].open[kind][index];
                double[] factors = car.signs[d][kind][index];
                double beside = kind == 0 ? besideOnSome(measured, open) : besideOnWhole(measured, open);
                int patch = LifeStory.PATCH.ordinal();
                unseen += car.scales[d] * missed * beside * open[patch] * factors[patch];
                for (int s = 0; s < STORIES; s++) {
                    all += car.scales[d] * measured[s] * factors[s];
                }
            }
        }
        return unseen / (unseen + all);
    }

    private static double besideOnSome(double[] measured, double[] open) {
        return StoryNumber.PATCH_OVER.value() * ratio(measured, open, LifeStory.OVER)
                + StoryNumber.PATCH_AS_WAS.value() * ratio(measured, open, LifeStory.FACTORY)
                + StoryNumber.PATCH_LEVELLED.value() * ratio(measured, open, LifeStory.LEVELLED);
    }

    /** On a car refinished whole a patch lies under the job. */
    private static double besideOnWhole(double[] measured, double[] open) {
        int over = LifeStory.OVER.ordinal();
        int stripped = LifeStory.STRIPPED.ordinal();
        double prior = open[over] + open[stripped];
        return prior > 0 ? (measured[over] + measured[stripped]) / prior : 0;
    }

    private static double ratio(double[] measured, double[] open, LifeStory story) {
        return open[story.ordinal()] > 0 ? measured[story.ordinal()] / open[story.ordinal()] : 0;
    }

    public double[] withoutRust() {
        return changed(new Panel(
                panel.zone(),
                panel.spotsMil(),
                panel.noMetal(),
                panel.signs(),
                panel.silent(),
                Optional.empty(),
                panel.neighbors()));
    }

    public double[] withoutNoMetal() {
        return changed(new Panel(
                panel.zone(), panel.spotsMil(), 0, panel.signs(), panel.silent(), panel.rust(), panel.neighbors()));
    }

    private double[] changed(Panel fewer) {
        double[] stories = new double[STORIES];
        for (int d = 0; d < car.sums.length; d++) {
            double[] others = SignFactors.others(fewer, car.draws, d);
            for (int kind = 0; kind < 2; kind++) {
                double[] factors = car.draws.signs().factors(fewer, d, kind == 1, null);
                double[] own = car.sums[d].measured[kind][index];
                for (int s = 0; s < STORIES; s++) {
                    stories[s] += car.scales[d] * own[s] * factors[s] * others[s];
                }
            }
        }
        return normalized(stories);
    }

    private double[] mixed(Use use) {
        double[] stories = new double[STORIES];
        for (int d = 0; d < car.sums.length; d++) {
            addDraw(use, d, stories);
        }
        return stories;
    }

    private void addDraw(Use use, int d, double[] stories) {
        for (int kind = 0; kind < 2; kind++) {
            double[] own = use == Use.ALL ? car.sums[d].measured[kind][index] : car.sums[d].open[kind][index];
            double[] factors = car.signs[d][kind][index];
            for (int s = 0; s < STORIES; s++) {
                stories[s] += car.scales[d] * own[s] * (use == Use.NOTHING ? 1 : factors[s]);
            }
        }
    }

    private static double[] normalized(double[] stories) {
        double sum = Arrays.stream(stories).sum();
        return Arrays.stream(stories).map(s -> s / sum).toArray();
    }

    static double filler(double[] stories) {
        return stories[LifeStory.PATCH.ordinal()] + stories[LifeStory.SKIM.ordinal()];
    }

    /** Probability of each story in one draw. */
    double[] inDraw(int draw) {
        double[] stories = new double[STORIES];
        addDraw(Use.ALL, draw, stories);
        return normalized(stories);
    }

    /** The 5th and the 95th percentile of "not factory" over the draws, never leaving the figure outside. */
    public double[] band() {
        double[] scores = refinish;
        Integer[] order = IntStream.range(0, scores.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, (a, b) -> Double.compare(scores[a], scores[b]));
        double figure = 1 - all()[0];
        double below = 0;
        double low = Double.NaN;
        double high = scores[order[order.length - 1]];
        for (int d : order) {
            below += car.bandWeights[d];
            if (Double.isNaN(low) && below >= LOW) {
                low = scores[d];
            }
            if (below >= HIGH) {
                high = scores[d];
                break;
            }
        }
        return new double[] {Math.min(low, figure), Math.max(high, figure)};
    }

    /**
     * What each member of the jury says.
     *
     * @return refinish and repair likelihood by process model
     */
    public Map<ProcessModel, double[]> jury() {
        Map<ProcessModel, double[]> said = new EnumMap<>(ProcessModel.class);
        for (ProcessModel model : ProcessModel.values()) {
            double[] stories = new double[STORIES];
            for (int d = 0; d < car.sums.length; d++) {
                if (car.draws.model(d) == model) {
                    addDraw(Use.ALL, d, stories);
                }
            }
            double[] all = normalized(stories);
            said.put(model, new double[] {1 - all[0], filler(all)});
        }
        return said;
    }
}
