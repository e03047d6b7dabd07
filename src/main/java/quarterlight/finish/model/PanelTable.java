package quarterlight.finish.model;

import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.Lattice;
import quarterlight.finish.number.StoryNumber;
import quarterlight.finish.place.SpotNeighbors;

/**
 * How likely the spots of one panel are, as a function of the level of its finish: tables over the lattice for every
 * within-panel spread and every kernel. Only for a panel with spots. Immutable.
 */
final class PanelTable {
    private static final double[] WITHIN = {.04, .058, .083, .12, .17, .25};
    /**
     * Shares of the spots that stand on a patch, and on a part that was refinished; and how likely each share is. A patch is 10 to 30 cm
     * wide, so it covers 1 to 10 of 100 of a door; there may be several, and a careful hand looks for them.
     */
    static final double[] ON_PATCH = {.03, .12, .4};

    static final double[] ON_PART = {.04, .22, .55};
    static final double[] PATCH_SHARE = {.4, .35, .25};
    static final double[] PART_SHARE = {.45, .3, .25};
    /** Logarithms by which a refinished part is thicker, equally likely. */
    static final double[] PART_STEP = {.3, .6, .9};

    private final double[][][] plain;
    private final double[][][] patch;
    private final double[][][] part;
    private final double[][] skim;

    private PanelTable(double[][][] plain, double[][][] patch, double[][][] part, double[][] skim) {
        this.plain = plain;
        this.patch = patch;
        this.part = part;
        this.skim = skim;
    }

    static int within(double spread) {
        return Lattice.nearest(WITHIN, spread);
    }

    static PanelTable of(Panel panel) {
        double[] y = panel.logMil();
        double[][] raw = new double[3 * WITHIN.length][Lattice.POINTS];
        double[] row = new double[3];
        int[][] nearest = panel.neighbors().map(PanelTable::array).orElse(new int[0][]);
        for (int k = 0; k < Lattice.POINTS; k++) {
            double level = Lattice.at(k);
            double[] onFiller = new double[y.length];
            for (int n = 0; n < y.length; n++) {
                onFiller[n] = onFiller(y[n], level);
            }
            for (int w = 0; w < WITHIN.length; w++) {
                atLevel(y, level, WITHIN[w], onFiller, nearest, row);
                for (int kind = 0; kind < 3; kind++) {
                    raw[kind * WITHIN.length + w][k] = row[kind];
                }
            }
        }
        double best = Double.MIN_NORMAL;
        for (double[] values : raw) {
            for (double value : values) {
                best = Math.max(best, value);
            }
        }
        double[][][] tables = new double[3 * WITHIN.length][Lattice.widths()][];
        for (int n = 0; n < raw.length; n++) {
            for (int k = 0; k < Lattice.POINTS; k++) {
                raw[n][k] /= best;
            }
            for (int width = 0; width < Lattice.widths(); width++) {
                tables[n][width] = Lattice.smoothed(raw[n], width);
            }
        }
        int w = WITHIN.length;
        return new PanelTable(
                java.util.Arrays.copyOfRange(tables, 0, w),
                java.util.Arrays.copyOfRange(tables, w, 2 * w),
                java.util.Arrays.copyOfRange(tables, 2 * w, 3 * w),
                skim(y, best));
    }

    /** Likelihood of all spots at one level: plain finish, a patch somewhere, a refinished part somewhere. */
    static void atLevel(double[] y, double level, double within, double[] onFiller, int[][] nearest, double[] into) {
        double stray = FixedNumber.STRAY.value();
        double plain = 1;
        double[] patch = {1, 1, 1};
        double[][] part = {{1, 1, 1}, {1, 1, 1}, {1, 1, 1}};
        double[] onBase = new double[y.length];
        double[] filled = new double[y.length];
        for (int n = 0; n < y.length; n++) {
            double base = spot(y[n], level, within);
            double far = stray * stray(y[n], level);
            onBase[n] = (1 - stray) * base + far;
            filled[n] = (1 - stray) * onFiller[n] + far;
            plain *= onBase[n];
            for (int s = 0; s < 3; s++) {
                patch[s] *= (1 - ON_PATCH[s]) * onBase[n] + ON_PATCH[s] * filled[n];
            }
            for (int t = 0; t < PART_STEP.length; t++) {
                double thicker = (1 - stray) * spot(y[n], level + PART_STEP[t], within) + far;
                for (int s = 0; s < 3; s++) {
                    part[t][s] *= (1 - ON_PART[s]) * onBase[n] + ON_PART[s] * thicker;
                }
            }
        }
        into[0] = plain;
        into[1] = 0;
        into[2] = 0;
        for (int s = 0; s < 3; s++) {
            into[1] += PATCH_SHARE[s] * patch[s];
            into[2] += PART_SHARE[s] * (part[0][s] + part[1][s] + part[2][s]) / 3;
        }
        if (nearest.length > 0) {
            double together = FixedNumber.TOGETHER.value();
            into[1] = (1 - together) * into[1]
                    + together * PatchLikelihood.likelihood(onBase, filled, nearest, ON_PATCH, PATCH_SHARE);
        }
    }

    private static int[][] array(SpotNeighbors neighbors) {
        return neighbors.order().stream()
                .map(row -> row.stream().mapToInt(n -> n).toArray())
                .toArray(int[][]::new);
    }

    /** Density of a spot's logarithm about a level. */
    static double spot(double y, double level, double within) {
        double wide = FixedNumber.WIDE_TAIL.value();
        return (1 - wide) * Lattice.normal(y, level, within)
                + wide * Lattice.normal(y, level, StoryNumber.WIDE_TIMES.value() * within);
    }

    static double stray(double y, double level) {
        return Lattice.normal(y, level + FixedNumber.STRAY_SHIFT.value(), FixedNumber.STRAY_SPREAD.value());
    }

    /** Density of the logarithm of finish and filler together, where the finish is this thick. */
    static double onFiller(double y, double level) {
        double depth = Math.exp(y) - Math.exp(level);
        if (depth < .3) {
            return 0;
        }
        double center = Math.log(FixedNumber.DEPTH_MIL.value());
        return Lattice.normal(Math.log(depth), center, FixedNumber.DEPTH_SPREAD.value()) * Math.exp(y) / depth;
    }

    /**
     * Likelihood of all spots on a panel skimmed to this level: three quarters of the skims are uneven and leave some spots beside
     * the filler, the rest are as even as finish and cover the panel.
     */
    static double skimmed(double[] y, double level, double within) {
        double stray = FixedNumber.STRAY.value();
        double touched = FixedNumber.SKIM_TOUCHED.value();
        double uneven = 1;
        double even = 1;
        for (double value : y) {
            double beside = (1 - touched)
                    * Lattice.normal(
                            value,
                            Math.log(StoryNumber.SKIM_BESIDE_MIL.value()),
                            StoryNumber.SKIM_BESIDE_SPREAD.value());
            double far = stray * Lattice.normal(value, level, StoryNumber.SKIM_STRAY_SPREAD.value());
            uneven *=
                    (1 - stray) * (touched * spot(value, level, StoryNumber.SKIM_UNEVEN_SPREAD.value()) + beside) + far;
            even *= (1 - stray) * spot(value, level, within) + far;
        }
        double share = StoryNumber.SKIM_UNEVEN.value();
        return share * uneven + (1 - share) * even;
    }

    private static double[][] skim(double[] y, double best) {
        double sd = FixedNumber.SKIM_SPREAD.value();
        double[] kernel = new double[2 * Lattice.POINTS];
        for (int k = 0; k < kernel.length; k++) {
            kernel[k] = Lattice.normal((k - Lattice.POINTS) * Lattice.STEP, 0, sd) * Lattice.STEP;
        }
        double[][] out = new double[WITHIN.length][Lattice.POINTS];
        for (int w = 0; w < WITHIN.length; w++) {
            double[] at = new double[Lattice.POINTS];
            for (int k = 0; k < Lattice.POINTS; k++) {
                at[k] = skimmed(y, Lattice.at(k), WITHIN[w]) / best;
            }
            for (int c = 0; c < Lattice.POINTS; c++) {
                for (int k = 0; k < Lattice.POINTS; k++) {
                    out[w][c] += at[k] * kernel[k - c + Lattice.POINTS];
                }
            }
        }
        return out;
    }

    /** @param place of the level, by {@link Lattice#place}, as in all that follow */
    double plain(int within, int width, double place) {
        return Lattice.look(plain[within][width], place);
    }

    double patch(int within, int width, double place) {
        return Lattice.look(patch[within][width], place);
    }

    double part(int within, int width, double place) {
        return Lattice.look(part[within][width], place);
    }

    double skim(int within, double place) {
        return Lattice.look(skim[within], place);
    }
}
