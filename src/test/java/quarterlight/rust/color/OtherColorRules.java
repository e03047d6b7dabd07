package quarterlight.rust.color;

/** Published ways to tell rust by its color, for comparing the program's rule with. */
final class OtherColorRules {
    private OtherColorRules() {}

    /** Share of red in the sum of the channels. */
    static double[] red(int[] srgb) {
        double[] score = new double[srgb.length];
        for (int i = 0; i < score.length; i++) {
            score[i] = shares(srgb[i])[0];
        }
        return score;
    }

    /** 1.4 r - g of the shares of red and green (G. E. Meyer, T. W. Hindman, K. Laksmana, SPIE 3543, 1998, from memory). */
    static double[] excessRed(int[] srgb) {
        double[] score = new double[srgb.length];
        for (int i = 0; i < score.length; i++) {
            double[] shares = shares(srgb[i]);
            score[i] = 1.4 * shares[0] - shares[1];
        }
        return score;
    }

    private static double[] shares(int rgb) {
        double red = rgb >> 16 & 0xFF;
        double green = rgb >> 8 & 0xFF;
        double sum = red + green + (rgb & 0xFF);
        return sum > 0 ? new double[] {red / sum, green / sum} : new double[] {1 / 3.0, 1 / 3.0};
    }

    /** N. Otsu, IEEE Transactions on Systems, Man, and Cybernetics 9 (1979): the threshold that parts two classes best. */
    static double otsu(double[] score) {
        int[] bins = new int[256];
        for (double one : score) {
            bins[(int) Math.min(255, 255 * one)]++;
        }
        double all = 0;
        for (int n = 0; n < bins.length; n++) {
            all += (double) n * bins[n];
        }
        double below = 0;
        double sum = 0;
        double best = -1;
        int at = 0;
        for (int n = 0; n < bins.length - 1; n++) {
            below += bins[n];
            sum += (double) n * bins[n];
            double above = score.length - below;
            if (below > 0 && above > 0) {
                double apart = sum / below - (all - sum) / above;
                double between = below * above * apart * apart;
                if (between > best) {
                    best = between;
                    at = n + 1;
                }
            }
        }
        return at / 255.0;
    }
}
