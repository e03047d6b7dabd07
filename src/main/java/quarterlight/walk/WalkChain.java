package quarterlight.walk;

import java.util.Arrays;
import quarterlight.walk.pace.GapReading;

/**
 * One hypothesis of a walk: the chances of each zone at each moment, kept up to date as single moments are pinned.
 * <p>A hidden Markov chain whose state is a zone and whether the walker has just come; forward-backward smoothing (Rabiner, "A tutorial on
 * hidden Markov models", Proc. IEEE 77, 1989; from memory). After a change only those messages are computed again that it reaches.
 * One thread at a time.
 */
final class WalkChain {
    /** A message that changes by less than this is the same. */
    private static final double SAME = 1e-6;

    private final JumpMatrix jumps;
    private final double[] moving;
    private final double[] movingIfStayed;
    private final double[][] seen;
    /** Just come at the moment, given what was seen up to it. */
    private final double[][] come;
    /** Has stayed at the moment. */
    private final double[][] stayed;

    private final double[][] laterIfCome;
    private final double[][] laterIfStayed;
    private final double[] logSeen;
    private final double[] mix;

    /** @param seen likelihood of what was seen at each moment by zone; shared, changed by the caller before {@link #update} */
    WalkChain(JumpMatrix jumps, GapReading gaps, double[][] seen) {
        int moments = seen.length;
        int zones = jumps.size();
        this.jumps = jumps;
        moving = gaps.ifCome();
        movingIfStayed = gaps.ifStayed();
        this.seen = seen;
        come = new double[moments][zones];
        stayed = new double[moments][zones];
        laterIfCome = new double[moments][zones];
        laterIfStayed = new double[moments][zones];
        logSeen = new double[moments];
        mix = new double[zones];
        forwardFrom(0, moments - 1);
        Arrays.fill(laterIfCome[moments - 1], 1.0 / zones);
        Arrays.fill(laterIfStayed[moments - 1], 1.0 / zones);
        backwardFrom(moments - 1, 0);
    }

    /** Takes in that what was seen has changed at moments from {@code first} to {@code last}. */
    void update(int first, int last) {
        forwardFrom(first, last);
        backwardFrom(last, first);
    }

    /** Log likelihood of all that was seen. */
    double logLikelihood() {
        return Arrays.stream(logSeen).sum();
    }

    /** Adds the chances of the zones at a moment, times {@code weight}. */
    void addChances(int t, double weight, double[] sum) {
        double all = 0;
        for (int i = 0; i < mix.length; i++) {
            mix[i] = come[t][i] * laterIfCome[t][i] + stayed[t][i] * laterIfStayed[t][i];
            all += mix[i];
        }
        for (int i = 0; i < mix.length; i++) {
            sum[i] += weight * mix[i] / all;
        }
    }

    /** Computes forward messages from {@code t} on, as far as they change after {@code atLeastTo}. */
    private void forwardFrom(int from, int atLeastTo) {
        int zones = mix.length;
        double[] arrive = new double[zones];
        double[] remain = new double[zones];
        boolean changing = true;
        for (int t = from; t < seen.length && (changing || t <= atLeastTo); t++) {
            if (t == 0) {
                Arrays.fill(arrive, 0.5 / zones);
                Arrays.fill(remain, 0.5 / zones);
            } else {
                double ifCome = moving[t - 1];
                double ifStayed = movingIfStayed[t - 1];
                for (int i = 0; i < zones; i++) {
                    mix[i] = ifCome * come[t - 1][i] + ifStayed * stayed[t - 1][i];
                    remain[i] = (1 - ifCome) * come[t - 1][i] + (1 - ifStayed) * stayed[t - 1][i];
                }
                jumps.forward(mix, arrive);
            }
            double all = 0;
            for (int i = 0; i < zones; i++) {
                arrive[i] *= seen[t][i];
                remain[i] *= seen[t][i];
                all += arrive[i] + remain[i];
            }
            logSeen[t] = Math.log(all);
            changing = store(arrive, come[t], 1 / all);
            boolean stays = store(remain, stayed[t], 1 / all);
            changing = changing || stays;
        }
    }

    /** Computes backward messages before {@code from}, as far as they change before {@code atLeastTo}. */
    private void backwardFrom(int from, int atLeastTo) {
        int zones = mix.length;
        double[] moved = new double[zones];
        double[] ahead = new double[zones];
        double[] rest = new double[zones];
        double[] ifCame = new double[zones];
        boolean changing = true;
        for (int t = from; t > 0 && (changing || t > atLeastTo); t--) {
            for (int i = 0; i < zones; i++) {
                ahead[i] = laterIfCome[t][i] * seen[t][i];
                rest[i] = laterIfStayed[t][i] * seen[t][i];
            }
            jumps.backward(ahead, moved);
            double come1 = moving[t - 1];
            double stayed1 = movingIfStayed[t - 1];
            double sum = 0;
            for (int i = 0; i < zones; i++) {
                ifCame[i] = come1 * moved[i] + (1 - come1) * rest[i];
                mix[i] = stayed1 * moved[i] + (1 - stayed1) * rest[i];
                sum += ifCame[i] + mix[i];
            }
            changing = store(ifCame, laterIfCome[t - 1], 2 / sum);
            boolean stays = store(mix, laterIfStayed[t - 1], 2 / sum);
            changing = changing || stays;
        }
    }

    /** Puts {@code scale v} into {@code place}; true if that changes it. */
    private static boolean store(double[] v, double[] place, double scale) {
        boolean changes = false;
        for (int i = 0; i < v.length; i++) {
            double now = v[i] * scale;
            changes |= Math.abs(now - place[i]) > SAME;
            place[i] = now;
        }
        return changes;
    }
}
