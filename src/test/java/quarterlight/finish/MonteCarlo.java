package quarterlight.finish;

import static quarterlight.finish.number.JudgedNumber.AS_BUILT;
import static quarterlight.finish.number.JudgedNumber.BARE_COAT;
import static quarterlight.finish.number.JudgedNumber.COAT;
import static quarterlight.finish.number.JudgedNumber.COAT_SPREAD;
import static quarterlight.finish.number.JudgedNumber.FACTORY_THICK;
import static quarterlight.finish.number.JudgedNumber.FALSE_SIGNS;
import static quarterlight.finish.number.JudgedNumber.HORIZONTAL;
import static quarterlight.finish.number.JudgedNumber.JOB_SPREAD;
import static quarterlight.finish.number.JudgedNumber.LEVELLED;
import static quarterlight.finish.number.JudgedNumber.LEVEL_SHIFT;
import static quarterlight.finish.number.JudgedNumber.LEVEL_SPREAD;
import static quarterlight.finish.number.JudgedNumber.PANEL_SPREAD;
import static quarterlight.finish.number.JudgedNumber.PARTLY;
import static quarterlight.finish.number.JudgedNumber.REPLACED;
import static quarterlight.finish.number.JudgedNumber.SEEN;
import static quarterlight.finish.number.JudgedNumber.SKIM;
import static quarterlight.finish.number.JudgedNumber.WHOLE_CAR_CARE;
import static quarterlight.finish.number.JudgedNumber.WHOLE_OVER;
import static quarterlight.finish.number.JudgedNumber.WHOLE_STRIPPED;
import static quarterlight.finish.number.JudgedNumber.WITHIN_SPREAD;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.ProcessModel;
import quarterlight.finish.number.SignRates;
import quarterlight.visit.trial.SignKind;

/**
 * The model of docs/methods/finish-history.md once more, by plain Monte Carlo: judged numbers, scenario, factory level, coat
 * and shares are drawn from their laws; each panel's likelihood is integrated directly over its level. It shares the tables
 * of numbers with the program and none of its lattice, kernels, tables, draws or sums.
 */
final class MonteCarlo {
    private static final int NODES = 21;
    private static final double MEDIAN_LACQUER = 5.2;

    /** A panel: spots in mil, signs. The panels of these cars are doors: no guard, no solder, upright. */
    record Door(List<Double> mil, Map<SignKind, Boolean> signs) {}

    private final Random random;
    private final Map<JudgedNumber, Double> number = new EnumMap<>(JudgedNumber.class);

    MonteCarlo(long seed) {
        random = new Random(seed);
    }

    private double of(JudgedNumber judged) {
        return number.get(judged);
    }

    /** Refinish and repair likelihood of the first panel. */
    double[] first(List<Door> doors, int states) {
        return first(doors, states, Map.of());
    }

    /** The same where some numbers are known: their standard normal scores. */
    double[] first(List<Door> doors, int states, Map<JudgedNumber, Double> held) {
        double[] stories = new double[8];
        for (int n = 0; n < states; n++) {
            ProcessModel model = ProcessModel.values()[random.nextInt(4)];
            for (JudgedNumber judged : JudgedNumber.values()) {
                double score = random.nextGaussian() + model.shift(judged);
                number.put(judged, judged.at(held.getOrDefault(judged, score)));
            }
            state(doors, stories);
        }
        double sum = 0;
        for (double story : stories) {
            sum += story;
        }
        return new double[] {1 - stories[0] / sum, (stories[6] + stories[7]) / sum};
    }

    private void state(List<Door> doors, double[] stories) {
        double[] prior = {
            .34 * Math.exp(of(AS_BUILT)), .45, .1 * Math.exp(of(WHOLE_OVER)), .08 * Math.exp(of(WHOLE_STRIPPED))
        };
        int scenario = pick(prior);
        double level = random.nextDouble() < .18
                ? Math.log(4.2) + .42 * random.nextGaussian()
                : Math.log(MEDIAN_LACQUER) + of(LEVEL_SHIFT) + of(LEVEL_SPREAD) * random.nextGaussian();
        double highest = scenario < 2 ? Math.log(13) : Math.log(10);
        if (level < Math.log(1.6) || level > highest) {
            return;
        }
        double touched = scenario == 0 ? .02 : scenario == 1 ? any(.04, .12, .28, .55) : .99;
        double filled = scenario < 2 ? any(.12, .35, .65) : any(.05, .2, .5);
        double coat = of(COAT);
        double job = scenario == 2
                ? any(
                        new double[] {.66, .12, .18, .04},
                        new double[][] {{Math.log(coat), .42}, {0, .7}, {Math.log(2 * coat), .45}, {Math.log(20), .6}})
                : Math.log(of(BARE_COAT)) + .30 * random.nextGaussian();
        if (scenario == 2 && (job < Math.log(.5) - .17 || job > Math.log(36) + .17)
                || scenario == 3 && Math.abs(job - Math.log(of(BARE_COAT))) > .72) {
            return;
        }
        double[] share = shares(scenario, touched, filled);
        double others = 1;
        double[] own = new double[8];
        for (int p = 0; p < doors.size(); p++) {
            double[] likelihood = likelihood(doors.get(p), scenario, level, job);
            double sum = 0;
            for (int s = 0; s < 8; s++) {
                sum += share[s] * likelihood[s];
            }
            if (p == 0) {
                for (int s = 0; s < 8; s++) {
                    own[s] = share[s] * likelihood[s];
                }
            } else {
                others *= sum;
            }
        }
        double weight = Math.pow(others, FixedNumber.TRUST.value());
        for (int s = 0; s < 8; s++) {
            stories[s] += weight * own[s];
        }
    }

    private double[] shares(int scenario, double touched, double filled) {
        double plain = touched * (1 - filled);
        double filler = touched * filled;
        double rest = 1 - of(REPLACED) - .08;
        double skim = scenario < 2 ? .22 : .28;
        double[] kinds =
                switch (scenario) {
                    case 2 -> new double[] {.92, 0, 0, .03, .05};
                    case 3 -> new double[] {.05, 0, 0, .90, .05};
                    default ->
                        new double[] {
                            rest * (1 - of(PARTLY)) * (1 - of(LEVELLED)),
                            rest * (1 - of(PARTLY)) * of(LEVELLED),
                            rest * of(PARTLY),
                            .08,
                            of(REPLACED)
                        };
                };
        return new double[] {
            1 - touched,
            plain * kinds[0],
            plain * kinds[1],
            plain * kinds[2],
            plain * kinds[3],
            plain * kinds[4],
            filler * (1 - skim),
            filler * skim
        };
    }

    // ---------------------------------------------------------------- one panel

    private double[] likelihood(Door door, int scenario, double carLevel, double job) {
        double own = carLevel - .3 * of(HORIZONTAL);
        double[] spots = spots(door, scenario, own, job);
        for (int s = 0; s < 8; s++) {
            spots[s] *= signs(door, s, scenario >= 2);
        }
        return spots;
    }

    private double[] spots(Door door, int scenario, double own, double job) {
        double[] y = door.mil().stream()
                .mapToDouble(mil -> Math.log(Math.max(.4, Math.min(40, mil))))
                .toArray();
        double b = of(PANEL_SPREAD);
        double mil = Math.exp(own);
        double coat = of(COAT);
        double loose = Math.hypot(b, .22);
        double bare = spread(m -> plain(y, m), Math.log(of(BARE_COAT)), .34);
        double replaced = .75 * spread(m -> plain(y, m), Math.log(coat + 1), .3)
                + .25 * spread(m -> plain(y, m), Math.log(coat + 5), .34);
        double skim = spread(m -> skim(y, m), Math.log(of(SKIM)), .5);
        if (scenario >= 2) {
            double finish = scenario == 2 ? Math.log(mil + Math.exp(job)) : job;
            double even = scenario == 2 ? .9 : .92;
            double finished =
                    even * spread(m -> plain(y, m), finish, b) + (1 - even) * spread(m -> part(y, m), finish, b);
            return new double[] {
                spread(m -> plain(y, m), own, b),
                scenario == 2 ? finished : spread(m -> plain(y, m), Math.log(mil + coat), .34),
                0,
                0,
                scenario == 2 ? bare : finished,
                .5 * replaced + .5 * spread(m -> plain(y, m), finish, .3),
                spread(m -> patch(y, m), finish, b),
                skim
            };
        }
        double part = spread(m -> part(y, m), own, b);
        double more = spread(m -> plain(y, m), Math.log(mil + 4), .17);
        double thick = of(FACTORY_THICK);
        double over = 0;
        double patchOver = 0;
        double[] scores = {-1.35, -.6, 0, .6, 1.35};
        double[] weights = {.125, .225, .3, .225, .125};
        double job1 = Math.hypot(.6 * b, .5 * of(JOB_SPREAD));
        for (int k = 0; k < 5; k++) {
            double sum = Math.log(Math.max(.5, mil - .4) + coat * Math.exp(of(COAT_SPREAD) * scores[k]));
            over += weights[k] * spread(m -> plain(y, m), sum, job1);
            patchOver += weights[k] * spread(m -> patch(y, m), sum, job1);
        }
        double equal = Math.log(.35 * mil + .9 * coat);
        double blend = Math.log(mil + 1.8);
        return new double[] {
            (1 - thick - .015) * spread(m -> plain(y, m), own, b)
                    + thick * (more + part) / 2
                    + .015 * spread(m -> plain(y, m), own - .5, .34),
            over,
            spread(m -> plain(y, m), equal, loose),
            .6 * part + .25 * spread(m -> plain(y, m), blend, loose) + .15 * spread(m -> part(y, m), blend, loose),
            bare,
            replaced,
            .6 * patchOver + .2 * spread(m -> patch(y, m), own, b) + .2 * spread(m -> patch(y, m), equal, loose),
            skim
        };
    }

    /** Mean of a function of a normal level, by the midpoint rule over 7 standard deviations. */
    private static double spread(DoubleUnaryOperator at, double center, double sd) {
        double sum = 0;
        double weight = 0;
        for (int n = 0; n < NODES; n++) {
            double z = 7.0 * (n + .5) / NODES - 3.5;
            double w = Math.exp(-z * z / 2);
            weight += w;
            sum += w * at.applyAsDouble(center + sd * z);
        }
        return sum / weight;
    }

    private double around(double y, double level) {
        double w = of(WITHIN_SPREAD);
        return .9 * density(y, level, w) + .1 * density(y, level, 2.5 * w);
    }

    private static double stray(double y, double level) {
        return FixedNumber.STRAY.value() * density(y, level + .4, FixedNumber.STRAY_SPREAD.value());
    }

    private double plain(double[] y, double level) {
        double product = 1;
        for (double value : y) {
            product *= (1 - FixedNumber.STRAY.value()) * around(value, level) + stray(value, level);
        }
        return product;
    }

    private double patch(double[] y, double level) {
        return mixed(y, level, new double[] {.03, .12, .4}, new double[] {.4, .35, .25}, value -> {
            double depth = Math.exp(value) - Math.exp(level);
            return depth < .3 ? 0 : density(Math.log(depth), Math.log(15), 1) * Math.exp(value) / depth;
        });
    }

    private double part(double[] y, double level) {
        double[] shares = {.04, .22, .55};
        double[] weights = {.45, .3, .25};
        return (mixed(y, level, shares, weights, value -> around(value, level + .3))
                        + mixed(y, level, shares, weights, value -> around(value, level + .6))
                        + mixed(y, level, shares, weights, value -> around(value, level + .9)))
                / 3;
    }

    private double mixed(double[] y, double level, double[] shares, double[] weights, DoubleUnaryOperator other) {
        double sum = 0;
        for (int s = 0; s < shares.length; s++) {
            double product = 1;
            for (double value : y) {
                double density = (1 - shares[s]) * around(value, level) + shares[s] * other.applyAsDouble(value);
                product *= (1 - FixedNumber.STRAY.value()) * density + stray(value, level);
            }
            sum += weights[s] * product;
        }
        return sum;
    }

    private double skim(double[] y, double level) {
        double sum = 0;
        for (double[] kind : new double[][] {{.75, .3, .85}, {.25, of(WITHIN_SPREAD), 1}}) {
            double product = 1;
            for (double value : y) {
                double on = .9 * density(value, level, kind[1]) + .1 * density(value, level, 2.5 * kind[1]);
                double density = kind[2] * on + (1 - kind[2]) * density(value, Math.log(6), .6);
                double far = FixedNumber.STRAY.value() * density(value, level, 1.2);
                product *= (1 - FixedNumber.STRAY.value()) * density + far;
            }
            sum += kind[0] * product;
        }
        return sum;
    }

    private double signs(Door door, int story, boolean whole) {
        double[] qualities =
                story == 0 ? new double[] {1} : whole ? new double[] {of(WHOLE_CAR_CARE)} : new double[] {.3, 1, 1.6};
        double[] weights = qualities.length == 1 ? new double[] {1} : new double[] {.4, .4, .2};
        double sum = 0;
        for (int q = 0; q < qualities.length; q++) {
            double product = 1;
            for (Map.Entry<SignKind, Boolean> sign : door.signs().entrySet()) {
                SignRates.Row row = SignRates.rows().get(sign.getKey().ordinal());
                double rate = row.rates().get(story) * of(SEEN);
                double seen;
                if (row.ofFactory()) {
                    seen = Math.min(.95, rate);
                } else {
                    double wrong = Math.min(.5, row.rates().get(0) * of(FALSE_SIGNS));
                    double contrast = !whole ? 1 : sign.getKey() == SignKind.TEXTURE_DIFFERS ? .45 : 1;
                    contrast = whole && sign.getKey() == SignKind.COLOR_DIFFERS ? .35 : contrast;
                    double shows =
                            story == LifeStory.FACTORY.ordinal() ? 0 : Math.min(.95, rate * qualities[q] * contrast);
                    seen = 1 - (1 - wrong) * (1 - shows);
                }
                product *= sign.getValue() ? seen : 1 - seen;
            }
            sum += weights[q] * product;
        }
        return sum;
    }

    // ---------------------------------------------------------------- chance

    private static double density(double x, double mean, double sd) {
        double z = (x - mean) / sd;
        return Math.exp(-z * z / 2) / (sd * Math.sqrt(2 * Math.PI));
    }

    private double any(double... values) {
        return values[random.nextInt(values.length)];
    }

    private double any(double[] weights, double[][] laws) {
        double[] law = laws[pick(weights)];
        return law[0] + law[1] * random.nextGaussian();
    }

    private int pick(double[] weights) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        double left = random.nextDouble() * sum;
        for (int n = 0; n < weights.length; n++) {
            left -= weights[n];
            if (left <= 0) {
                return n;
            }
        }
        return weights.length - 1;
    }
}
