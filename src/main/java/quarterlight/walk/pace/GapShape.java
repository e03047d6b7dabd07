package quarterlight.walk.pace;

import java.util.ArrayList;
import java.util.List;

/**
 * How long the gaps are within a stop and between stops: densities of x = ln(gap / the visit's usual gap). Three families, each with its
 * values equally likely: gaps that scatter normally; gaps of a heavy tail, as one who waits for light or for others; bursts with looks
 * between them.
 */
interface GapShape {
    /** @return density of a gap within a stop */
    double within(double x);

    /** @return density of a gap from one stop to the next */
    double between(double x);

    default boolean heavyTailed() {
        return false;
    }

    default boolean inBursts() {
        return false;
    }

    /** Share of a long pause among moves, and among gaps within a stop. Judgement. */
    double PAUSE_MOVING = 0.05;

    double PAUSE_WITHIN = 0.01;

    /** All shapes with their prior weights, which sum to 1. */
    static List<Weighed> all() {
        List<Weighed> all = new ArrayList<>();
        for (List<GapShape> family : List.of(Normal.family(), HeavyTail.family(), Bursts.family())) {
            family.forEach(shape -> all.add(new Weighed(shape, 1.0 / 3 / family.size())));
        }
        return all;
    }

    /** A shape and how likely it is beforehand. */
    record Weighed(GapShape shape, double weight) {}

    static double withPause(double main, double x, double share) {
        return (1 - share) * main + share * normal(x, 3.6, 0.9);
    }

    static double normal(double x, double middle, double sd) {
        double z = (x - middle) / sd;
        return Math.exp(-0.5 * z * z) / (sd * 2.5066282746310002);
    }

    /** Both kinds of gap scatter normally in the logarithm. */
    record Normal(double within, double withinSd, double more, double moreSd) implements GapShape {
        static List<GapShape> family() {
            List<GapShape> family = new ArrayList<>();
            for (double within : new double[] {-0.6, -0.4, -0.2, 0}) {
                for (double sd : new double[] {0.4, 0.6, 0.8}) {
                    for (double more : new double[] {0.6, 1, 1.4, 1.9}) {
                        for (double moreSd : new double[] {0.5, 0.75}) {
                            family.add(new Normal(within, sd, more, moreSd));
                        }
                    }
                }
            }
            return family;
        }

        @Override
        public double within(double x) {
            return withPause(normal(x, within, withinSd), x, PAUSE_WITHIN);
        }

        @Override
        public double between(double x) {
            return withPause(normal(x, within + more, moreSd), x, PAUSE_MOVING);
        }
    }

    /** Both begin at a least gap and fall off as a power. */
    record HeavyTail(double least, double tail, double more) implements GapShape {
        private static final double RISE = 0.12;

        static List<GapShape> family() {
            List<GapShape> family = new ArrayList<>();
            for (double least : new double[] {-1, -0.85, -0.7, -0.55}) {
                for (double tail : new double[] {0.6, 0.85, 1.1}) {
                    for (double more : new double[] {0.3, 0.6, 0.9, 1.3}) {
                        family.add(new HeavyTail(least, tail, more));
                    }
                }
            }
            return family;
        }

        @Override
        public boolean heavyTailed() {
            return true;
        }

        @Override
        public double within(double x) {
            return density(x - least);
        }

        @Override
        public double between(double x) {
            return density(x - least - more);
        }

        private double density(double over) {
            return Math.exp(over < 0 ? over / RISE : -over / tail) / (RISE + tail);
        }
    }

    /** Within a stop some gaps are very short, others nearly as long as a move. */
    record Bursts(double within, double looks, double share, double more) implements GapShape {
        static List<GapShape> family() {
            List<GapShape> family = new ArrayList<>();
            for (double within : new double[] {-0.5, -0.3, -0.1}) {
                for (double looks : new double[] {1.6, 2.2, 2.8}) {
                    for (double share : new double[] {0.2, 0.35, 0.5}) {
                        for (double more : new double[] {0.2, 0.5, 0.9}) {
                            family.add(new Bursts(within, looks, share, more));
                        }
                    }
                }
            }
            return family;
        }

        @Override
        public boolean inBursts() {
            return true;
        }

        @Override
        public double within(double x) {
            double main = (1 - share) * normal(x, within, 0.45) + share * normal(x, within + looks, 0.65);
            return withPause(main, x, PAUSE_WITHIN);
        }

        @Override
        public double between(double x) {
            return withPause(normal(x, within + looks + more, 0.7), x, PAUSE_MOVING);
        }
    }
}
