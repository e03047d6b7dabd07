package quarterlight.finish;

import java.util.List;
import java.util.SplittableRandom;
import quarterlight.car.ZoneId;

/**
 * What more spots of one zone can be expected to settle of the question "factory finish or not" there.
 * <p>The expected fall of the entropy of that question, by simulation: levels and values are drawn from the zone's
 * posterior, and the posterior is taken anew for each draw. What the spots would say of the other zones is left out.
 *
 * @param spots the number of further spots worth taking: the least of 1, 2, 3, 5 and 8 that brings nine tenths of what 8
 *     would bring
 * @param expectedBits expected fall in bits with that many spots, 0 to 1
 */
public record NextMeasurement(ZoneId zone, int spots, double expectedBits) {
    private static final List<Integer> STEPS = List.of(1, 2, 3, 5, 8);
    private static final int MOST = 8;
    private static final int DRAWS = 160;
    private static final int STRIDE = 3;
    private static final double ENOUGH = 0.9;
    private static final double UNCERTAIN = 1e-4;

    static NextMeasurement of(PanelPosterior posterior, ZoneId zone, long seed) {
        Draws draws = new Draws(posterior);
        double before = entropy(draws.notFactory());
        if (before < UNCERTAIN) {
            return new NextMeasurement(zone, 1, 0);
        }
        SplittableRandom random = new SplittableRandom(seed);
        double[] after = new double[MOST + 1];
        for (int n = 0; n < DRAWS; n++) {
            double[] values = draws.values(random, n % 2 == 0);
            double[] path = draws.path(values);
            double weight = 2 * (n % 2 == 0 ? draws.notFactory() : 1 - draws.notFactory()) / DRAWS;
            for (int k = 1; k <= MOST; k++) {
                after[k] += weight * entropy(path[k]);
            }
        }
        double best = before - after[MOST];
        for (int spots : STEPS) {
            double gain = before - after[spots];
            if (gain >= ENOUGH * best) {
                return new NextMeasurement(zone, spots, Math.max(0, gain));
            }
        }
        return new NextMeasurement(zone, MOST, Math.max(0, best));
    }

    /** Entropy of a yes-no question in bits. */
    private static double entropy(double p) {
        return p <= 0 || p >= 1 ? 0 : -(p * Math.log(p) + (1 - p) * Math.log(1 - p)) / Math.log(2);
    }

    /** Draws values from a posterior and takes it anew. */
    private static final class Draws {
        private final FinishGrid grid;
        private final double[] factory;
        private final double[] plain;
        private final double[] filled;
        private final double notFactory;

        /** Sums out what does not matter: the histories without filler are alike once the level is known. */
        Draws(PanelPosterior posterior) {
            grid = posterior.grid;
            int points = grid.panel.count();
            int cells = grid.spreads() * ((points + STRIDE - 1) / STRIDE);
            factory = new double[cells];
            plain = new double[cells];
            filled = new double[cells];
            double not = 0;
            for (int w = 0; w < grid.spreads(); w++) {
                for (int k = 0; k < points; k++) {
                    int cell = k / STRIDE * grid.spreads() + w;
                    factory[cell] += posterior.mass[0][w][k];
                    plain[cell] += posterior.mass[1][w][k] + posterior.mass[2][w][k];
                    filled[cell] += posterior.mass[3][w][k];
                    not += posterior.mass[1][w][k] + posterior.mass[2][w][k] + posterior.mass[3][w][k];
                }
            }
            notFactory = not;
        }

        double notFactory() {
            return notFactory;
        }

        private double log(int cell) {
            int k = cell / grid.spreads() * STRIDE + STRIDE / 2;
            return grid.panel.log(Math.min(k, grid.panel.count() - 1));
        }

        /** Logarithms of values as {@link #MOST} further spots might give them, refinished or not. */
        double[] values(SplittableRandom random, boolean refinished) {
            FinishModel model = grid.model;
            double left = random.nextDouble() * (refinished ? notFactory : 1 - notFactory);
            int cell = 0;
            boolean filler = false;
            for (; cell < factory.length; cell++) {
                left -= refinished ? plain[cell] : factory[cell];
                if (left <= 0) {
                    break;
                }
                if (refinished) {
                    left -= filled[cell];
                    filler = left <= 0;
                    if (filler) {
                        break;
                    }
                }
            }
            int at = Math.min(cell, factory.length - 1);
            double within = grid.withinLogSds[at % grid.spreads()];
            double[] values = new double[MOST];
            for (int n = 0; n < MOST; n++) {
                boolean onFiller = filler && random.nextDouble() < model.fillerShare();
                double normal = gaussian(random);
                if (random.nextDouble() < model.strayShare()) {
                    double width = Math.log(model.strayHighMil() / model.strayLowMil());
                    values[n] = Math.log(model.strayLowMil()) + random.nextDouble() * width;
                } else if (onFiller) {
                    values[n] = model.filler().logMedian() + model.filler().logSd() * normal;
                } else {
                    values[n] = log(at) + within * normal;
                }
            }
            return values;
        }

        private static double gaussian(SplittableRandom random) {
            double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
            return radius * Math.cos(2 * Math.PI * random.nextDouble());
        }

        /** Probability of "not factory" after the first k values, for k from 0. */
        double[] path(double[] values) {
            FinishModel model = grid.model;
            double sound = 1 - model.strayShare();
            double stray = model.strayShare() / Math.log(model.strayHighMil() / model.strayLowMil());
            double[] path = new double[values.length + 1];
            path[0] = notFactory;
            double[] f = factory.clone();
            double[] p = plain.clone();
            double[] x = filled.clone();
            for (int n = 0; n < values.length; n++) {
                double onFiller = sound * model.fillerShare() * model.filler().densityOfLog(values[n]) + stray;
                double sumFactory = 0;
                double sumOther = 0;
                for (int cell = 0; cell < f.length; cell++) {
                    double within = grid.withinLogSds[cell % grid.spreads()];
                    double density = sound * LogNormal.normal(values[n], log(cell), within);
                    f[cell] *= density + stray;
                    p[cell] *= density + stray;
                    x[cell] *= (1 - model.fillerShare()) * density + onFiller;
                    sumFactory += f[cell];
                    sumOther += p[cell] + x[cell];
                }
                path[n + 1] = sumOther / (sumFactory + sumOther);
            }
            return path;
        }
    }
}
