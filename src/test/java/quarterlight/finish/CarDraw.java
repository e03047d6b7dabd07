package quarterlight.finish;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import quarterlight.car.FinishProfile;
import quarterlight.visit.SignKind;

/**
 * A car drawn at random from the model, straight from its description: scenario, level, spread, job, then each panel.
 * Shares no code with the computation but the model's numbers.
 */
final class CarDraw {
    private final FinishModel model;
    private final Random random;

    /** Spread within a panel of the car last drawn. */
    double within;
    /** Histories of the panels of the car last drawn, as positions in {@link History}. */
    int[] histories = {};
    /** Log levels in mil of the panels of the car last drawn. */
    double[] logLevels = {};

    CarDraw(FinishModel model, Random random) {
        this.model = model;
        this.random = random;
    }

    void car(FinishProfile profile, int panels) {
        Scenario scenario = scenario();
        double level = logDraw(model.levels().get(profile));
        within = model.withinLogSds().get(random.nextInt(model.withinLogSds().size()));
        double jobCoat = logDraw(model.coat());
        double jobBare = logDraw(model.bareCoat());
        histories = new int[panels];
        logLevels = new double[panels];
        for (int q = 0; q < panels; q++) {
            int h = pick(model.panels().get(scenario).toArray());
            histories[q] = h;
            double factory = level + model.panelLogSd() * random.nextGaussian();
            double coat = scenario == Scenario.WHOLE_CAR_OVER
                    ? jobCoat + model.jobLogSd() * random.nextGaussian()
                    : logDraw(model.coat());
            double bare = scenario == Scenario.WHOLE_CAR_STRIPPED
                    ? jobBare + model.jobLogSd() * random.nextGaussian()
                    : logDraw(model.bareCoat());
            logLevels[q] = switch (h) {
                case 0 -> factory;
                case 2 -> bare;
                default -> Math.log(Math.exp(factory) + Math.exp(coat));
            };
        }
    }

    /** Density of the log of a value, given panel q of the car last drawn. */
    double density(int q, double logValue) {
        double stray = 1 / Math.log(model.strayHighMil() / model.strayLowMil());
        double sound = LogNormal.normal(logValue, logLevels[q], within);
        if (histories[q] == 3) {
            sound = (1 - model.fillerShare()) * sound
                    + model.fillerShare() * model.filler().densityOfLog(logValue);
        }
        return (1 - model.strayShare()) * sound + model.strayShare() * stray;
    }

    /** Values in um of panel q, and the number of spots without metal in the last entry of {@code noMetal}. */
    List<Double> values(int q, int spots, int[] noMetal) {
        List<Double> um = new ArrayList<>();
        double[] none = model.noMetal().toArray();
        for (int n = 0; n < spots; n++) {
            if (random.nextDouble() < none[histories[q]]) {
                noMetal[q]++;
                continue;
            }
            double log;
            if (random.nextDouble() < model.strayShare()) {
                double width = Math.log(model.strayHighMil() / model.strayLowMil());
                log = Math.log(model.strayLowMil()) + random.nextDouble() * width;
            } else if (histories[q] == 3 && random.nextDouble() < model.fillerShare()) {
                log = logDraw(model.filler());
            } else {
                log = logLevels[q] + within * random.nextGaussian();
            }
            um.add(25.4 * Math.exp(log));
        }
        return um;
    }

    /** Signs looked for, seen as the history has it (independently). */
    Map<SignKind, Boolean> signs(int q, List<SignKind> asked) {
        Map<SignKind, Boolean> signs = new EnumMap<>(SignKind.class);
        for (SignKind sign : asked) {
            signs.put(sign, random.nextDouble() < model.signs().get(sign).toArray()[histories[q]]);
        }
        return signs;
    }

    private Scenario scenario() {
        Scenario[] all = Scenario.values();
        double[] priors = new double[all.length];
        for (int s = 0; s < all.length; s++) {
            priors[s] = model.middle().of(all[s]);
        }
        return all[pick(priors)];
    }

    private int pick(double[] chances) {
        double left = random.nextDouble();
        for (int h = 0; h < chances.length; h++) {
            left -= chances[h];
            if (left < 0) {
                return h;
            }
        }
        return chances.length - 1;
    }

    private double logDraw(LogNormal law) {
        return law.logMedian() + law.logSd() * random.nextGaussian();
    }
}
