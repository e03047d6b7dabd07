package quarterlight.finish.model;

import java.util.Arrays;
import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.Lattice;
import quarterlight.finish.number.StoryNumber;

/**
 * Where the levels of those stories lie between the points of the lattice that hang on the factory level of a panel. Panels of one level share them. Immutable.
 *
 * @param over by the points of the coat
 */
@SuppressWarnings("ArrayRecordComponent")
record StoryLevels(
        double own, double equal, double blended, double reworked, double thinned, double paintedOver, double[] over) {

    /**
     * @param level logarithm of the panel's factory level in mil
     * @param coat mil that a refinish adds
     * @param coats the same at the points of its law
     */
    static StoryLevels of(double level, double coat, double[] coats) {
        double mil = Math.exp(level);
        double washed = Math.max(.5, mil - FixedNumber.WASHED_OFF.value());
        return new StoryLevels(
                Lattice.place(level),
                ofMil(StoryNumber.LEVELLED_LEFT.value() * mil + StoryNumber.LEVELLED_COAT.value() * coat),
                ofMil(mil + StoryNumber.BLEND_MIL.value()),
                ofMil(mil + FixedNumber.REWORK_MIL.value()),
                Lattice.place(level - StoryNumber.THINNED_BY.value()),
                ofMil(mil + coat),
                Arrays.stream(coats).map(more -> ofMil(washed + more)).toArray());
    }

    static double ofMil(double mil) {
        return Lattice.place(Math.log(mil));
    }
}
