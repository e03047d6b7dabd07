package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.walk.pace.GapReading;

/** The messages of the chain against the sum over every path there is. */
class WalkChainTest {
    private static final List<ZoneId> ZONES = List.of(new ZoneId("a"), new ZoneId("b"), new ZoneId("c"));
    private static final Map<ZoneId, Set<ZoneId>> NEXT_DOOR = Map.of(
            ZONES.get(0), Set.of(ZONES.get(1)),
            ZONES.get(1), Set.of(ZONES.get(0), ZONES.get(2)),
            ZONES.get(2), Set.of(ZONES.get(1)));
    private static final WalkModel MODEL = WalkModel.V5;
    private static final int MOMENTS = 5;

    private final JumpMatrix jumps = new JumpMatrix(
            JumpMatrix.Ways.of(ZONES, NEXT_DOOR, ZoneKin.NONE, WalkHabits.NONE, MODEL),
            new WalkModel.Moves(1, 0.1, 0, 0, 0.08, 1));

    /** Next door nine in ten, one in ten to any of the three; by hand one step, and the four lengths written out. */
    @Test
    void aMovePassesOverZonesBySteps() {
        double[][] one = {
            {.1 / 3, .9 + .1 / 3, .1 / 3}, {.45 + .1 / 3, .1 / 3, .45 + .1 / 3}, {.1 / 3, .9 + .1 / 3, .1 / 3}
        };
        double[][] two = times(one, one);
        double[][] three = times(two, one);
        double[][] four = times(three, one);
        double[] moved = new double[3];
        for (int from = 0; from < 3; from++) {
            double[] here = new double[3];
            here[from] = 1;
            jumps.forward(here, moved);
            for (int to = 0; to < 3; to++) {
                assertThat(moved[to])
                        .isCloseTo(
                                .92 * one[from][to]
                                        + .92 * .08 * two[from][to]
                                        + .92 * .08 * .08 * three[from][to]
                                        + .08 * .08 * .08 * four[from][to],
                                within(1e-12));
            }
        }
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] out = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    out[i][j] += a[i][k] * b[k][j];
                }
            }
        }
        return out;
    }

    @Test
    void chancesAndLikelihoodEqualTheSumOverAllPaths() {
        for (long seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            double[] moving = random.doubles(MOMENTS - 1, 0.02, 0.7).toArray();
            double[][] seen = random.doubles(MOMENTS)
                    .mapToObj(x -> random.doubles(ZONES.size(), 0.05, 1).toArray())
                    .toArray(double[][]::new);

            agrees(seed, new WalkChain(jumps, reading(moving), seen), moving, seen);
        }
    }

    @Test
    void afterAChangeTheyStillDo() {
        for (long seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            double[] moving = random.doubles(MOMENTS - 1, 0.02, 0.7).toArray();
            double[][] seen = new double[MOMENTS][];
            Arrays.fill(seen, new double[] {1, 1, 1});
            WalkChain chain = new WalkChain(jumps, reading(moving), seen);
            int t = random.nextInt(MOMENTS);
            seen[t] = new double[] {0.02, 0.9, 0.08};
            chain.update(t, t);

            agrees(seed, chain, moving, seen);
        }
    }

    @Test
    void fromAZoneItGoesNextDoorMostlyAndAnywhereSeldom() {
        double[] from = {1, 0, 0};
        double[] to = new double[3];

        jumps.forward(from, to);

        // one step by these rows; two, three and four steps each 0.08 times as likely as one less
        double near = 0.9 + 0.1 / 3;
        double far = 0.1 / 3;
        double half = 0.45 + 0.1 / 3;
        double[][] step = {{far, near, far}, {half, far, half}, {far, near, far}};
        double[] wanted = new double[3];
        double[] at = {1, 0, 0};
        double[] shares = {0.92, 0.92 * 0.08, 0.92 * 0.08 * 0.08, 0.08 * 0.08 * 0.08};
        for (double share : shares) {
            double[] next = new double[3];
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    next[j] += at[i] * step[i][j];
                }
            }
            at = next;
            for (int j = 0; j < 3; j++) {
                wanted[j] += share * at[j];
            }
        }
        assertThat(to).containsExactly(wanted, within(1e-12));
        assertThat(to[0] + to[1] + to[2]).isCloseTo(1, within(1e-12));
    }

    /** A pin in the middle of a long walk reaches both ends as far as it would had it been there from the beginning. */
    @Test
    void aChangeIsCarriedAsFarAsItMatters() {
        int moments = 60;
        for (long seed = 1; seed <= 6; seed++) {
            Random random = new Random(seed);
            double[] moving = random.doubles(moments - 1, 0.01, seed % 2 == 0 ? 0.7 : 0.05)
                    .toArray();
            double[][] seen = new double[moments][];
            for (int t = 0; t < moments; t++) {
                seen[t] = random.nextInt(8) == 0 ? random.doubles(3, 0.05, 1).toArray() : new double[] {1, 1, 1};
            }
            WalkChain chain = new WalkChain(jumps, reading(moving), seen);
            int first = 20 + random.nextInt(10);
            seen[first] = new double[] {0.001, 0.002, 0.9};
            seen[first + 9] = new double[] {0.9, 0.002, 0.001};
            chain.update(first, first + 9);
            WalkChain anew = new WalkChain(jumps, reading(moving), seen);
            assertThat(chain.logLikelihood()).as("seed %d", seed).isCloseTo(anew.logLikelihood(), within(1e-4));
            for (int t = 0; t < moments; t++) {
                double[] found = new double[3];
                double[] wanted = new double[3];
                chain.addChances(t, 1, found);
                anew.addChances(t, 1, wanted);
                assertThat(found).as("seed %d, moment %d", seed, t).containsExactly(wanted, within(1e-4));
            }
        }
    }

    private static GapReading reading(double[] moving) {
        return new GapReading(
                0,
                0,
                0,
                Arrays.stream(moving).map(x -> 0.3 * x).toArray(),
                Arrays.stream(moving).map(x -> 1.3 * x).toArray());
    }

    private void agrees(long seed, WalkChain chain, double[] moving, double[][] seen) {
        double[][] sums = new double[MOMENTS][3];
        double all = paths(new int[MOMENTS], new boolean[MOMENTS], 0, 1, moving, seen, sums);
        assertThat(chain.logLikelihood()).as("seed %d", seed).isCloseTo(Math.log(all), within(1e-6));
        for (int t = 0; t < MOMENTS; t++) {
            double[] chances = new double[3];
            chain.addChances(t, 1, chances);
            for (int i = 0; i < 3; i++) {
                assertThat(chances[i]).as("seed %d, moment %d", seed, t).isCloseTo(sums[t][i] / all, within(1e-6));
            }
        }
    }

    /** Adds the probability of every path of zones and of "has just come" from moment {@code t} on. */
    private double paths(
            int[] zone, boolean[] come, int t, double p, double[] moving, double[][] seen, double[][] sums) {
        if (t == MOMENTS) {
            for (int k = 0; k < MOMENTS; k++) {
                sums[k][zone[k]] += p;
            }
            return p;
        }
        double all = 0;
        for (zone[t] = 0; zone[t] < 3; zone[t]++) {
            for (boolean fresh : new boolean[] {true, false}) {
                come[t] = fresh;
                double step = t == 0 ? 1 / 6.0 : step(zone[t - 1], come[t - 1], zone[t], fresh, moving[t - 1]);
                all += paths(zone, come, t + 1, p * step * seen[t][zone[t]], moving, seen, sums);
            }
        }
        return all;
    }

    private double step(int from, boolean justCome, int to, boolean moves, double moving) {
        double chance = justCome ? 0.3 * moving : 1.3 * moving;
        double[] at = new double[3];
        at[from] = 1;
        double[] next = new double[3];
        jumps.forward(at, next);
        return moves ? chance * next[to] : from == to ? 1 - chance : 0;
    }
}
