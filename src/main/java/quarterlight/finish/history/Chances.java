package quarterlight.finish.history;

/**
 * One probability, likelihood or factor for each {@link History}.
 *
 * @param factory for {@link History#FACTORY}; finite, 0 or more, as all four
 */
public record Chances(double factory, double over, double stripped, double filler) {
    public Chances {
        for (double value : new double[] {factory, over, stripped, filler}) {
            if (!Double.isFinite(value) || value < 0) {
                throw new IllegalArgumentException("a chance is 0 or more, not " + value);
            }
        }
    }

    public double of(History history) {
        return switch (history) {
            case FACTORY -> factory;
            case OVER -> over;
            case STRIPPED -> stripped;
            case FILLER -> filler;
        };
    }

    /** The four in the order of {@link History}; a new array. */
    double[] toArray() {
        return new double[] {factory, over, stripped, filler};
    }

    static Chances ofArray(double[] values) {
        return new Chances(values[0], values[1], values[2], values[3]);
    }

    public double sum() {
        return factory + over + stripped + filler;
    }
}
