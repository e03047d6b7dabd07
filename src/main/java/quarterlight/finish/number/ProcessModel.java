package quarterlight.finish.number;

import java.util.Map;
import quarterlight.units.Worded;

/**
 * A view of how cars come about: one member of the jury. It leans some of the judged numbers to one side, by standard
 * deviations of their range; all of it is judgement. The evidence of a car is run through each.
 */
public enum ProcessModel implements Worded {
    EVEN_WORK(
            "factories and painters worked evenly",
            Map.of(JudgedNumber.PANEL_SPREAD, -.7, JudgedNumber.WITHIN_SPREAD, -.4, JudgedNumber.COAT_SPREAD, -.5)),
    UNEVEN_WORK(
            "factories and painters worked unevenly, polishing and wear took their share",
            Map.of(JudgedNumber.PANEL_SPREAD, .7, JudgedNumber.WITHIN_SPREAD, .4, JudgedNumber.LEVEL_SPREAD, .5)),
    MUCH_WORKED(
            "most cars of this age were painted, and more than once",
            Map.of(JudgedNumber.AS_BUILT, -.8, JudgedNumber.WHOLE_OVER, .8, JudgedNumber.FALSE_SIGNS, -.3)),
    LITTLE_WORKED(
            "most cars were left alone, and work was small and local",
            Map.of(JudgedNumber.AS_BUILT, .8, JudgedNumber.WHOLE_OVER, -.8, JudgedNumber.PARTLY, .5));

    private final String words;

    @SuppressWarnings("ImmutableEnumChecker")
    private final Map<JudgedNumber, Double> shifts;

    ProcessModel(String words, Map<JudgedNumber, Double> shifts) {
        this.words = words;
        this.shifts = Map.copyOf(shifts);
    }

    /** A clause for readers. */
    public String words() {
        return words;
    }

    /** By how many standard deviations it leans a number; 0 for most. */
    public double shift(JudgedNumber number) {
        return shifts.getOrDefault(number, 0.0);
    }
}
