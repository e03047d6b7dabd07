package quarterlight.walk;

import java.util.Arrays;
import java.util.List;
import quarterlight.walk.pace.GapCounts;
import quarterlight.walk.pace.GapReading;
import quarterlight.walk.pace.GapReadings;

/** The chance that the walker moved in each gap: read from the gaps themselves, or by what earlier visits tell. */
final class MoveChances {
    private static final double SHORTEST = 0.05;

    private MoveChances() {}

    /** True if earlier visits tell how a gap tells of a move. */
    static boolean known(GapCounts habits, WalkModel model) {
        return habits.total() >= model.habitGaps();
    }

    /** @param gaps seconds, none negative */
    static List<GapReading> of(double[] gaps, GapCounts habits, WalkModel model) {
        double usual = GapCounts.usual(gaps);
        if (!known(habits, model)) {
            return GapReadings.of(gaps, usual);
        }
        double[] fit = habits.logistic();
        double base = habits.oddsOfMove();
        double[] odds = Arrays.stream(gaps)
                .map(gap -> Math.exp(fit[0] + fit[1] * Math.log(Math.max(gap / usual, SHORTEST))) / base)
                .toArray();
        return List.of(GapReadings.counted(odds, habits.law()));
    }
}
