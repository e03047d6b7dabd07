package quarterlight.walk.pace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Reads the gaps of a visit: under each idea of how many photos a stop has, which gaps were moves, averaged over all shapes that gaps may have,
 * each counting by how well it explains them.
 */
public final class GapReadings {
    static final int PHASES = 8;
    private static final StopLaw QUICK = StopLaw.atLeast(1, 0.6, 4).inHurry(0.6);
    static final StopLaw SOME = StopLaw.atLeast(1, 3, PHASES);
    private static final StopLaw MANY = StopLaw.atLeast(3, 4, PHASES);

    /** The ideas: a few photos a stop; many; and all kinds, changing at one move in ten. Judgement. */
    private static final List<StopChain> IDEAS = List.of(
            new StopChain(new StopLaw[] {SOME}, 0),
            new StopChain(new StopLaw[] {MANY}, 0),
            new StopChain(new StopLaw[] {QUICK, SOME, MANY}, 0.1));

    /** How much less likely bursts are beforehand where a stop has a few photos: a burst with looks between takes more. Judgement. */
    private static final double BURSTS_WITH_FEW = 0.2;

    /** Shapes below this share of the best one are left out, and ideas likewise. */
    private static final double NEGLIGIBLE = 0.01;

    private static final double SHORTEST = 0.05;
    private static final double SUREST = 0.97;
    private static final double LEAST_SURE = 0.001;
    private static final double UNKNOWN = 0.2;

    private GapReadings() {}

    /**
     * Read from the gaps themselves; if enough gaps of earlier visits were counted, by what those tell and by the best idea of these gaps,
     * equally likely beforehand, since a visit may differ from the earlier ones.
     *
     * @param gaps seconds, none negative
     * @param enough from how many counted gaps on the earlier visits decide
     */
    public static List<GapReading> of(double[] gaps, GapCounts habits, int enough) {
        double usual = GapCounts.usual(gaps);
        List<GapReading> own = fromGaps(gaps, usual);
        if (habits.total() < enough) {
            return own;
        }
        GapReading best = own.stream()
                .max(Comparator.comparingDouble(GapReading::logWeight))
                .orElseThrow();
        return List.of(fromHabits(gaps, usual, habits), best.weighing(0));
    }

    private static GapReading fromHabits(double[] gaps, double usual, GapCounts habits) {
        double[] fit = habits.logistic();
        double base = habits.oddsOfMove();
        double[] odds = Arrays.stream(gaps)
                .map(gap -> Math.exp(fit[0] + fit[1] * Math.log(Math.max(gap / usual, SHORTEST))) / base)
                .toArray();
        return counted(odds, habits.law());
    }

    private static List<GapReading> fromGaps(double[] gaps, double usual) {
        double[] x = Arrays.stream(gaps)
                .map(gap -> Math.log(Math.max(gap / usual, SHORTEST)))
                .toArray();
        List<GapReading> readings = new ArrayList<>();
        for (StopChain idea : IDEAS) {
            readings.add(average(idea, x));
        }
        double best = readings.stream().mapToDouble(GapReading::logWeight).max().orElseThrow();
        return readings.stream()
                .filter(reading -> reading.logWeight() > best + Math.log(NEGLIGIBLE))
                .toList();
    }

    /** Under a law that was counted, where a gap's odds of being a move are known too. */
    private static GapReading counted(double[] oddsOfMove, StopLaw law) {
        double[][] within = new double[1][oddsOfMove.length];
        Arrays.fill(within[0], 1);
        double[][] sum = new double[oddsOfMove.length][4];
        new StopChain(new StopLaw[] {law}, 0).addChances(within, new double[][] {oddsOfMove}, 1, sum);
        return reading(0, 0, 0, sum);
    }

    private static GapReading average(StopChain idea, double[] x) {
        List<GapShape.Weighed> shapes = GapShape.all();
        double[] weights = new double[shapes.size()];
        for (int i = 0; i < weights.length; i++) {
            GapShape shape = shapes.get(i).shape();
            double prior = shapes.get(i).weight() * (shape.inBursts() && idea == IDEAS.get(0) ? BURSTS_WITH_FEW : 1);
            weights[i] = Math.log(prior)
                    + idea.logEvidence(densities(idea, x, shape::within), densities(idea, x, shape::between));
        }
        double best = Arrays.stream(weights).max().orElseThrow();
        double all = Arrays.stream(weights).map(one -> Math.exp(one - best)).sum();
        double[][] sum = new double[x.length][4];
        double heavy = 0;
        double bursts = 0;
        for (int i = 0; i < weights.length; i++) {
            double weight = Math.exp(weights[i] - best);
            GapShape shape = shapes.get(i).shape();
            heavy += shape.heavyTailed() ? weight / all : 0;
            bursts += shape.inBursts() ? weight / all : 0;
            if (weight > NEGLIGIBLE) {
                double[][] within = densities(idea, x, shape::within);
                idea.addChances(within, densities(idea, x, shape::between), weight / all, sum);
            }
        }
        return reading(best + Math.log(all), heavy, bursts, sum);
    }

    private static double[][] densities(StopChain idea, double[] x, DoubleUnaryOperator density) {
        return Arrays.stream(idea.laws())
                .map(law -> Arrays.stream(x)
                        .map(one -> density.applyAsDouble(one + law.hurry()))
                        .toArray())
                .toArray(double[][]::new);
    }

    private static GapReading reading(double logWeight, double heavy, double bursts, double[][] sum) {
        double[] ifCome = new double[sum.length];
        double[] ifStayed = new double[sum.length];
        for (int t = 0; t < sum.length; t++) {
            ifCome[t] = chance(sum[t][0], sum[t][1]);
            ifStayed[t] = chance(sum[t][2], sum[t][3]);
        }
        return new GapReading(logWeight, heavy, bursts, ifCome, ifStayed);
    }

    private static double chance(double moves, double all) {
        return all < 1e-9 ? UNKNOWN : Math.min(SUREST, Math.max(LEAST_SURE, moves / all));
    }
}
