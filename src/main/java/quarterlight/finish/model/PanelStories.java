package quarterlight.finish.model;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.ProcessModel;
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

    /** A judged number and the score with it in its lower and in its upper third. */
    public record Sway(JudgedNumber number, double low, double high) {
        public double reach() {
            return Math.abs(high - low);
        }
    }

    /** The judged number that moves the refinish likelihood most. */
    public Sway sway() {
        double[] scores = refinish;
        Sway most = null;
        for (JudgedNumber number : JudgedNumber.values()) {
            double[] sum = new double[2];
            double[] weight = new double[2];
            for (int d = 0; d < scores.length; d++) {
                double score = car.draws.score(d, number);
                if (Math.abs(score) > .43) {
                    int side = score > 0 ? 1 : 0;
                    sum[side] += car.bandWeights[d] * scores[d];
                    weight[side] += car.bandWeights[d];
                }
            }
            if (weight[0] > 0 && weight[1] > 0) {
                Sway sway = new Sway(number, sum[0] / weight[0], sum[1] / weight[1]);
                if (most == null || sway.reach() > most.reach()) {
                    most = sway;
                }
            }
        }
        return most == null ? new Sway(JudgedNumber.PANEL_SPREAD, scores[0], scores[0]) : most;
    }
}
