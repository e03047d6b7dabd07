package quarterlight.walk.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The messages of the chain against the sum over every sequence of moves there is. */
class StopChainTest {
    private static final int GAPS = 7;
    private static final StopLaw FEW = StopLaw.atLeast(1, 1.5, 4);
    private static final StopLaw MANY = StopLaw.atLeast(3, 1, 5);

    private double[][] within;
    private double[][] between;
    private double all;
    private double[][] sums;

    @Test
    void evidenceAndChancesEqualTheSumOverAllMoves() {
        for (long seed = 1; seed <= 10; seed++) {
            Random random = new Random(seed);
            within = new double[][] {densities(random), densities(random)};
            between = new double[][] {densities(random), densities(random)};
            double change = 0.2;
            StopChain chain = new StopChain(new StopLaw[] {FEW, MANY}, change);
            all = 0;
            sums = new double[GAPS][4];
            for (int law = 0; law < 2; law++) {
                follow(0, law, 0, 0.5, new int[GAPS], change);
            }

            double[][] found = new double[GAPS][4];
            chain.addChances(within, between, 1, found);

            assertThat(chain.logEvidence(within, between)).as("seed %d", seed).isCloseTo(Math.log(all), within(1e-9));
            for (int t = 0; t < GAPS; t++) {
                for (int i = 0; i < 4; i++) {
                    assertThat(found[t][i])
                            .as("seed %d, gap %d, %d", seed, t, i)
                            .isCloseTo(sums[t][i] / all, within(1e-9));
                }
            }
        }
    }

    private static double[] densities(Random random) {
        return random.doubles(GAPS, 0.05, 1).toArray();
    }

    /** @param found per gap: 0 came and moves on, 1 came and stays, 2 stayed and moves on, 3 stayed and stays */
    private void follow(int gap, int law, int photos, double p, int[] found, double change) {
        if (gap == GAPS) {
            all += p;
            for (int t = 0; t < GAPS; t++) {
                int kind = found[t] / 2 * 2;
                sums[t][kind] += found[t] % 2 == 0 ? p : 0;
                sums[t][kind + 1] += p;
            }
            return;
        }
        StopLaw stop = law == 0 ? FEW : MANY;
        double on = stop.movesOn(Math.min(photos, stop.phases() - 1));
        int came = photos == 0 ? 0 : 2;
        found[gap] = came;
        for (int next = 0; next < 2; next++) {
            double to = change / 2 + (next == law ? 1 - change : 0);
            follow(gap + 1, next, 0, p * on * between[law][gap] * to, found, change);
        }
        found[gap] = came + 1;
        follow(gap + 1, law, photos + 1, p * (1 - on) * within[law][gap], found, change);
    }
}
