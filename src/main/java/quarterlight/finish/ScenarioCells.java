package quarterlight.finish;

import java.util.Arrays;

/**
 * The cells of one scenario: every combination of its shared unknowns, with their prior, and what each zone's tables say
 * in them. Cells are laid out as {@code c * inner + j}: c is level and spread, j the coat of the whole-car job (one value
 * only in the scenarios without such a job).
 */
final class ScenarioCells {
    // positions in arrays of one number for each history: Chances.toArray
    private static final int F = 0;
    private static final int O = 1;
    private static final int S = 2;
    private static final int X = 3;

    final Scenario scenario;
    /** Chances of the histories of a panel. */
    final double[] panel;
    /** Prior of each cell within the scenario; sums to 1. */
    final double[] prior;

    private final int outer;
    private final int inner;
    private final int spreads;

    ScenarioCells(FinishGrid grid, Scenario scenario) {
        this.scenario = scenario;
        this.panel = grid.model.panels().get(scenario).toArray();
        this.spreads = grid.spreads();
        this.outer = grid.level.count() * spreads;
        double[] innerPrior =
                switch (scenario) {
                    case WHOLE_CAR_OVER -> grid.coatPrior;
                    case WHOLE_CAR_STRIPPED -> grid.bareCoatPrior;
                    case AS_BUILT, SOME_PANELS -> new double[] {1};
                };
        this.inner = innerPrior.length;
        this.prior = new double[outer * inner];
        for (int c = 0; c < outer; c++) {
            for (int j = 0; j < inner; j++) {
                prior[c * inner + j] = grid.levelPrior[c / spreads] / spreads * innerPrior[j];
            }
        }
    }

    int count() {
        return prior.length;
    }

    /** Cells per combination of level and spread. */
    int inner() {
        return inner;
    }

    /** The point of the car's level that a cell belongs to. */
    int levelPoint(int cell) {
        return cell / inner / spreads;
    }

    /**
     * The likelihood of a zone's evidence in each cell, its history unknown.
     *
     * @param factor factors of the histories besides the values
     */
    double[] likelihood(PanelTable zone, double[] factor) {
        double[] k = new double[4];
        for (int h = 0; h < 4; h++) {
            k[h] = panel[h] * factor[h];
        }
        double[] sums = new double[prior.length];
        for (int c = 0; c < outer; c++) {
            if (!zone.hasValues) {
                Arrays.fill(sums, k[F] + k[O] + k[S] + k[X]);
                return sums;
            }
            double factory = k[F] * zone.factory[c];
            int row = c * inner;
            switch (scenario) {
                case WHOLE_CAR_OVER -> {
                    double base = factory + k[S] * zone.ownBare[c % spreads];
                    for (int at = row; at < row + inner; at++) {
                        sums[at] = base + k[O] * zone.over[at] + k[X] * zone.filler[at];
                    }
                }
                case WHOLE_CAR_STRIPPED -> {
                    double base = factory + k[O] * zone.ownOver[c] + k[X] * zone.ownFiller[c];
                    int bare = c % spreads * inner;
                    for (int j = 0; j < inner; j++) {
                        sums[row + j] = base + k[S] * zone.bare[bare + j];
                    }
                }
                case AS_BUILT, SOME_PANELS ->
                    sums[row] = factory
                            + k[O] * zone.ownOver[c]
                            + k[S] * zone.ownBare[c % spreads]
                            + k[X] * zone.ownFiller[c];
            }
        }
        return sums;
    }

    /** Sum over the cells of weight times the likelihood of the zone's values alone, for each history. */
    double[] expectation(PanelTable zone, double[] weight) {
        double[] sums = new double[4];
        for (int c = 0; c < outer; c++) {
            double whole = 0;
            double shared = 0;
            double filler = 0;
            int row = c * inner;
            int bare = c % spreads * inner;
            for (int j = 0; j < inner; j++) {
                double w = weight[row + j];
                whole += w;
                if (zone.hasValues && scenario == Scenario.WHOLE_CAR_OVER) {
                    shared += w * zone.over[row + j];
                    filler += w * zone.filler[row + j];
                } else if (zone.hasValues && scenario == Scenario.WHOLE_CAR_STRIPPED) {
                    shared += w * zone.bare[bare + j];
                }
            }
            if (!zone.hasValues) {
                for (int h = 0; h < 4; h++) {
                    sums[h] += whole;
                }
                continue;
            }
            boolean over = scenario == Scenario.WHOLE_CAR_OVER;
            boolean stripped = scenario == Scenario.WHOLE_CAR_STRIPPED;
            sums[F] += whole * zone.factory[c];
            sums[O] += over ? shared : whole * zone.ownOver[c];
            sums[S] += stripped ? shared : whole * zone.ownBare[c % spreads];
            sums[X] += over ? filler : whole * zone.ownFiller[c];
        }
        return sums;
    }

    /** The likelihood of the zone's values in one cell if its history is {@code history}. */
    double values(PanelTable zone, History history, int cell) {
        if (!zone.hasValues) {
            return 1;
        }
        int c = cell / inner;
        int spread = c % spreads;
        return switch (history) {
            case FACTORY -> zone.factory[c];
            case OVER -> scenario == Scenario.WHOLE_CAR_OVER ? zone.over[cell] : zone.ownOver[c];
            case STRIPPED ->
                scenario == Scenario.WHOLE_CAR_STRIPPED
                        ? zone.bare[spread * inner + cell % inner]
                        : zone.ownBare[spread];
            case FILLER -> scenario == Scenario.WHOLE_CAR_OVER ? zone.filler[cell] : zone.ownFiller[c];
        };
    }
}
