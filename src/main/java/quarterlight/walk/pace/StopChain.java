package quarterlight.walk.pace;

import java.util.Arrays;

/**
 * The hidden chain of one walk's stops given its gaps: which law the stop at hand follows and how many photos it has had. Forward-backward
 * smoothing (Rabiner, "A tutorial on hidden Markov models", Proc. IEEE 77, 1989; from memory). The walk begins with a stop.
 */
final class StopChain {
    private final StopLaw[] laws;
    private final int[] start;
    private final int states;
    private final double change;

    /**
     * @param laws what a stop may follow, equally likely at first
     * @param change chance, at a move, that the next stop follows any law anew
     */
    StopChain(StopLaw[] laws, double change) {
        this.laws = laws.clone();
        this.change = change;
        start = new int[laws.length + 1];
        for (int i = 0; i < laws.length; i++) {
            start[i + 1] = start[i] + laws[i].phases();
        }
        states = start[laws.length];
    }

    /** What the stops may follow. */
    StopLaw[] laws() {
        return laws.clone();
    }

    /**
     * Log evidence of the gaps.
     *
     * @param within density of each gap if it lies within a stop, by the law of the stop
     * @param between density of each gap if it is a move
     */
    double logEvidence(double[][] within, double[][] between) {
        double log = 0;
        double[] now = first();
        double[] next = new double[states];
        for (int t = 0; t < within[0].length; t++) {
            double all = step(now, next, t, within, between);
            log += Math.log(all);
            for (int s = 0; s < states; s++) {
                now[s] = next[s] / all;
            }
        }
        return log;
    }

    /**
     * Adds, for each gap, the chances of: just come and moving on; just come; stayed and moving on; stayed; each times {@code weight}.
     *
     * @param sum four values a gap
     */
    void addChances(double[][] within, double[][] between, double weight, double[][] sum) {
        int gaps = within[0].length;
        double[][] forward = new double[gaps + 1][];
        forward[0] = first();
        for (int t = 0; t < gaps; t++) {
            forward[t + 1] = new double[states];
            double all = step(forward[t], forward[t + 1], t, within, between);
            for (int s = 0; s < states; s++) {
                forward[t + 1][s] /= all;
            }
        }
        double[] later = new double[states];
        Arrays.fill(later, 1);
        double[] earlier = new double[states];
        for (int t = gaps - 1; t >= 0; t--) {
            back(t, later, earlier, within, between, forward[t], weight, sum[t]);
            double[] swap = later;
            later = earlier;
            earlier = swap;
        }
    }

    private double[] first() {
        double[] now = new double[states];
        for (int law = 0; law < laws.length; law++) {
            now[start[law]] = 1.0 / laws.length;
        }
        return now;
    }

    private double step(double[] now, double[] next, int t, double[][] within, double[][] between) {
        Arrays.fill(next, 0);
        double moved = 0;
        for (int law = 0; law < laws.length; law++) {
            double own = 0;
            int phases = laws[law].phases();
            for (int k = 0; k < phases; k++) {
                double here = now[start[law] + k];
                double on = laws[law].movesOn(k);
                own += here * on * between[law][t];
                next[start[law] + Math.min(k + 1, phases - 1)] += here * (1 - on) * within[law][t];
            }
            next[start[law]] += own * (1 - change);
            moved += own * change;
        }
        double all = 0;
        for (int law = 0; law < laws.length; law++) {
            next[start[law]] += moved / laws.length;
        }
        for (double x : next) {
            all += x;
        }
        return all;
    }

    private void back(
            int t,
            double[] later,
            double[] earlier,
            double[][] within,
            double[][] between,
            double[] forward,
            double weight,
            double[] sum) {
        double anew = 0;
        for (int law = 0; law < laws.length; law++) {
            anew += later[start[law]] / laws.length;
        }
        double all = 0;
        double[] found = new double[4];
        double scale = 0;
        for (int law = 0; law < laws.length; law++) {
            int phases = laws[law].phases();
            double afterMove = (1 - change) * later[start[law]] + change * anew;
            for (int k = 0; k < phases; k++) {
                int s = start[law] + k;
                double on = laws[law].movesOn(k) * between[law][t] * afterMove;
                double stay =
                        (1 - laws[law].movesOn(k)) * within[law][t] * later[start[law] + Math.min(k + 1, phases - 1)];
                earlier[s] = on + stay;
                scale += on + stay;
                int kind = k == 0 ? 0 : 2;
                found[kind] += forward[s] * on;
                found[kind + 1] += forward[s] * (on + stay);
                all += forward[s] * (on + stay);
            }
        }
        for (int i = 0; i < 4; i++) {
            sum[i] += weight * found[i] / all;
        }
        for (int s = 0; s < states; s++) {
            earlier[s] *= states / scale;
        }
    }
}
