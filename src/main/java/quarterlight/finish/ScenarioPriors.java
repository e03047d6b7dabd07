package quarterlight.finish;

/**
 * Probabilities of the four scenarios before anything was measured; they sum to 1.
 *
 * @param asBuilt for {@link Scenario#AS_BUILT}; 0 to 1, as all four
 */
public record ScenarioPriors(double asBuilt, double somePanels, double wholeCarOver, double wholeCarStripped) {
    public ScenarioPriors {
        double least = Math.min(Math.min(asBuilt, somePanels), Math.min(wholeCarOver, wholeCarStripped));
        double sum = asBuilt + somePanels + wholeCarOver + wholeCarStripped;
        if (!(least >= 0) || !(Math.abs(sum - 1) < 1e-9)) {
            throw new IllegalArgumentException("priors are 0 or more and sum to 1, not to " + sum);
        }
    }

    public double of(Scenario scenario) {
        return switch (scenario) {
            case AS_BUILT -> asBuilt;
            case SOME_PANELS -> somePanels;
            case WHOLE_CAR_OVER -> wholeCarOver;
            case WHOLE_CAR_STRIPPED -> wholeCarStripped;
        };
    }
}
