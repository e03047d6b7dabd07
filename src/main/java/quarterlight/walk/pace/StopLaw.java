package quarterlight.walk.pace;

import java.util.List;

/**
 * How many photos a stop has, as the chance that its walker moves on after the first, second, third photo and so on; the last chance holds for
 * all later ones. Immutable.
 */
public final class StopLaw {
    private static final double USUAL_WORTH = 2;

    private final double[] movesOn;
    private final double hurry;

    private StopLaw(double[] movesOn, double hurry) {
        this.movesOn = movesOn;
        this.hurry = hurry;
    }

    /** The same, by one whose gaps are so much shorter (natural logarithm). */
    StopLaw inHurry(double shorter) {
        return new StopLaw(movesOn, shorter);
    }

    double hurry() {
        return hurry;
    }

    /** At least so many photos, and a Poisson number of {@code more} on average. */
    static StopLaw atLeast(int least, double more, int phases) {
        double[] chance = new double[least + 20];
        double p = Math.exp(-more);
        for (int extra = 0; least + extra <= chance.length; extra++) {
            chance[least + extra - 1] = p;
            p *= more / (extra + 1);
        }
        double left = 1;
        double[] movesOn = new double[phases];
        for (int k = 0; k < phases; k++) {
            movesOn[k] = chance[k] / left;
            left -= chance[k];
        }
        return new StopLaw(movesOn, 0);
    }

    /**
     * From stops that were counted: the share that ended after each photo, with what is usual counting as two stops.
     *
     * @param reached how many stops had a first, second, third photo and a known next one
     * @param ended how many of them ended there
     */
    static StopLaw counted(List<Integer> reached, List<Integer> ended, StopLaw usual) {
        double[] movesOn = new double[usual.movesOn.length];
        for (int k = 0; k < movesOn.length; k++) {
            movesOn[k] = (ended.get(k) + USUAL_WORTH * usual.movesOn[k]) / (reached.get(k) + USUAL_WORTH);
        }
        return new StopLaw(movesOn, 0);
    }

    int phases() {
        return movesOn.length;
    }

    /** @param phase 0 for the first photo of a stop */
    double movesOn(int phase) {
        return movesOn[phase];
    }
}
