package quarterlight.finish;

/**
 * How fine the integrals over unknown thicknesses are: a lattice of log thickness, and how many of its steps lie
 * between the points of each shared unknown.
 *
 * @param perUnit lattice points per unit of natural logarithm
 * @param levelSteps at most so many lattice steps between points of the factory level; a narrower prior gets fewer
 * @param coatSteps lattice steps between points of the coat of a whole-car job
 * @param bareCoatSteps lattice steps between points of the coat on a stripped car
 * @param tails half-width of every prior in standard deviations
 */
public record GridSize(int perUnit, int levelSteps, int coatSteps, int bareCoatSteps, double tails) {
    /** 81 to 127 points of the level, 58 of the coat, 68 of the coat on a stripped car, 424 of a panel's level. */
    public static final GridSize USUAL = new GridSize(64, 3, 6, 3, 4.5);

    public GridSize {
        if (perUnit < 16 || levelSteps < 1 || coatSteps < 1 || bareCoatSteps < 1 || !(tails >= 3)) {
            throw new IllegalArgumentException("the grid is too coarse");
        }
    }

    /** Steps between points of a level whose log-sd is {@code logSd}: never coarser than 80 intervals at 64 per unit. */
    int levelSteps(double logSd) {
        return Math.max(1, Math.min(levelSteps, (int) Math.floor(2 * tails * logSd * 64 / 80)));
    }
}
