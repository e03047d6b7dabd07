package quarterlight.finish.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The sum over middle spots and numbers of spots on a patch, against the same written out. */
class PatchLikelihoodTest {
    private static final double[] SHARES = {.08, .28, .6};
    private static final double[] WEIGHTS = {.4, .35, .25};
    private static final int[][] NEAREST = {{0, 1, 2, 3}, {1, 0, 2, 3}, {2, 3, 1, 0}, {3, 2, 1, 0}};

    @Test
    void isTheMeanOverMiddleSpotsOfEveryNumber() {
        Random random = new Random(1);
        double[] beside = random.doubles(4, .1, 3).toArray();
        double[] on = random.doubles(4, .1, 3).toArray();
        double sum = 0;
        double[] choose = {1, 4, 6, 4, 1};
        for (int s = 0; s < 3; s++) {
            for (int k = 0; k <= 4; k++) {
                double chance = choose[k] * Math.pow(SHARES[s], k) * Math.pow(1 - SHARES[s], 4 - k);
                for (int[] order : NEAREST) {
                    double product = 1;
                    for (int n = 0; n < 4; n++) {
                        product *= n < k ? on[order[n]] : beside[order[n]];
                    }
                    sum += WEIGHTS[s] * chance * product / 4;
                }
            }
        }
        assertThat(PatchLikelihood.likelihood(beside, on, NEAREST, SHARES, WEIGHTS))
                .isCloseTo(sum, within(1e-12));
    }

    @Test
    void whereOnAndBesideAreAlikePlacesSayNothing() {
        double[] beside = {.5, 2, 1, .3};
        assertThat(PatchLikelihood.likelihood(beside, beside, NEAREST, SHARES, WEIGHTS))
                .isCloseTo(.3, within(1e-12));
    }

    @Test
    void neighborsOnThePatchAreLikelierThanTwoFarApart() {
        double[] beside = {1, 1, .01, .01};
        double[] on = {.01, .01, 1, 1};
        double[] apart = {1, .01, 1, .01};
        double[] onApart = {.01, 1, .01, 1};
        assertThat(PatchLikelihood.likelihood(beside, on, NEAREST, SHARES, WEIGHTS))
                .isGreaterThan(3 * PatchLikelihood.likelihood(apart, onApart, NEAREST, SHARES, WEIGHTS));
    }
}
