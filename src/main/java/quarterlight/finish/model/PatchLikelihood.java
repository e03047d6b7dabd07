package quarterlight.finish.model;

/**
 * Likelihood of the spots of a panel where those on a patch of filler lie together: around one of them, nearest ones first.
 * How many they are is binomial about the shares a patch may have, as where places are not known; each spot is equally likely
 * to be the middle one.
 */
final class PatchLikelihood {
    private PatchLikelihood() {}

    /**
     * @param beside density of each spot beside the patch
     * @param on density of each spot on it
     * @param nearest for each spot all spots, nearest first, itself among them at the head
     * @param shares shares of the spots that a patch may have
     * @param weights how likely each share is
     */
    static double likelihood(double[] beside, double[] on, int[][] nearest, double[] shares, double[] weights) {
        int n = beside.length;
        double[] region = new double[n + 1];
        double[] after = new double[n + 1];
        for (int[] order : nearest) {
            after[n] = 1;
            for (int k = n - 1; k >= 0; k--) {
                after[k] = after[k + 1] * beside[order[k]];
            }
            double within = 1;
            for (int k = 0; k <= n; k++) {
                region[k] += within * after[k] / n;
                within *= k < n ? on[order[k]] : 1;
            }
        }
        double sum = 0;
        for (int s = 0; s < shares.length; s++) {
            double chance = weights[s] * Math.pow(1 - shares[s], n);
            double odds = shares[s] / (1 - shares[s]);
            for (int k = 0; k <= n; k++) {
                sum += chance * region[k];
                chance *= odds * (n - k) / (k + 1);
            }
        }
        return sum;
    }
}
