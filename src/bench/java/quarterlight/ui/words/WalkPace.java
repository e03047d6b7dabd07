package quarterlight.ui.words;

import java.nio.file.Files;
import java.util.List;
import java.util.Locale;

/**
 * Prints what {@code WalkPaceTest} counts for each open narration, and for one that was kept apart from the rules, as rows of the table in docs/performance.md. A key takes the time that the Keystroke-Level Model
 * (Card, Moran and Newell, Communications of the ACM 23, 1980) gives: 0.28 s to press, and 1.35 s of thought before each that decides.
 */
public final class WalkPace {
    private static final double PRESS_S = 0.28;
    private static final double THOUGHT_S = 1.35;

    private WalkPace() {}

    public static void main(String[] args) throws Exception {
        for (String walk :
                List.of("larkspur-coupe", "sorrel-sedan", "teasel-wagon", "burdock-pickup", "comfrey-pickup")) {
            WalkPaceTest.Pace pace = WalkPaceTest.pace(walk, Files.createTempDirectory("pace"));
            double seconds = pace.keys() * PRESS_S + pace.decisions() * THOUGHT_S;
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %.1f | %d | %d | %d | %d | %d | %.2f | %.0f s | %.0f s |%n",
                    walk,
                    pace.minutes(),
                    pace.byHand(),
                    pace.kept(),
                    pace.dropped(),
                    pace.pages(),
                    pace.keys(),
                    (double) pace.keys() / pace.kept(),
                    seconds,
                    12 * seconds / pace.minutes());
        }
    }
}
