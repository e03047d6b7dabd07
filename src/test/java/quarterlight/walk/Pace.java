package quarterlight.walk;

import java.util.Random;

/** How the photos of a simulated walk lie in time: how many at a stop, and the gaps within and between stops, in seconds. */
public enum Pace {
    /** About 4 a stop, a few seconds apart; a longer step to the next; now and then a pause. */
    EVEN {
        @Override
        int photos(Random random) {
            return 1 + poisson(3, random);
        }

        @Override
        double within(Random random) {
            return spread(5, 0.6, random);
        }

        @Override
        double between(Random random) {
            return pause(0.05, random) + spread(14, 0.7, random);
        }
    },
    /** 4 to 9 a stop (6.5 on average), in bursts of a few within a second or two, with looks in between as long as a step. */
    BURSTS {
        @Override
        int photos(Random random) {
            return 4 + random.nextInt(6);
        }

        @Override
        double within(Random random) {
            return random.nextInt(3) > 0 ? spread(0.8, 0.4, random) : spread(9, 0.6, random);
        }

        @Override
        double between(Random random) {
            return pause(0.05, random) + spread(16, 0.7, random);
        }
    },
    /** One or two a stop, quickly: a first look round. */
    OVERVIEW {
        @Override
        int photos(Random random) {
            return 1 + random.nextInt(2);
        }

        @Override
        double within(Random random) {
            return spread(3, 0.5, random);
        }

        @Override
        double between(Random random) {
            return spread(7, 0.6, random);
        }
    },
    /** Gaps of the same heavy tail everywhere, only a little longer between stops: a gap says next to nothing. */
    HEAVY_TAILED {
        @Override
        int photos(Random random) {
            return 1 + poisson(3, random);
        }

        @Override
        double within(Random random) {
            return 4 / Math.pow(1 - random.nextDouble(), 1 / 1.2);
        }

        @Override
        double between(Random random) {
            return 8 / Math.pow(1 - random.nextDouble(), 1 / 1.2);
        }
    },
    /** 5 to 9 a stop (7 on average), with the gaps of {@link #EVEN}. */
    THOROUGH(EVEN),
    /** 5 to 9 a stop (7 on average), with the gaps of {@link #HEAVY_TAILED}. */
    THOROUGH_HEAVY_TAILED(HEAVY_TAILED);

    private final Pace gaps;

    Pace() {
        gaps = this;
    }

    Pace(Pace gaps) {
        this.gaps = gaps;
    }

    int photos(Random random) {
        return 5 + random.nextInt(5);
    }

    /** What {@link #photos} is on average. */
    double meanPhotos() {
        return switch (this) {
            case OVERVIEW -> 1.5;
            case BURSTS -> 6.5;
            case THOROUGH, THOROUGH_HEAVY_TAILED -> 7;
            default -> 4;
        };
    }

    double within(Random random) {
        return gaps.within(random);
    }

    double between(Random random) {
        return gaps.between(random);
    }

    private static double spread(double median, double logSd, Random random) {
        return median * Math.exp(logSd * random.nextGaussian());
    }

    private static double pause(double share, Random random) {
        return random.nextDouble() < share ? 60 + 540 * random.nextDouble() : 0;
    }

    private static int poisson(double mean, Random random) {
        int count = 0;
        for (double p = random.nextDouble(); p > Math.exp(-mean); p *= random.nextDouble()) {
            count++;
        }
        return count;
    }
}
