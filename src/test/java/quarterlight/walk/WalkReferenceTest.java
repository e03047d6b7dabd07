package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The suggestions on simulated walks: on the first what the method asks for (75 and 85 of 100), on the others a little below what was
 * measured (docs/performance.md, 8 inspectors from seed 1). The full study is {@code WalkStudy} in the benches.
 */
class WalkReferenceTest {
    private static final WalkScores.Place COUPE = WalkScores.Place.coupe();
    private static final Map<WalkKind, WalkScores> OF_EIGHT = new EnumMap<>(WalkKind.class);

    private static final Map<WalkKind, SpokenWalkScores.Heard> HEARD = new EnumMap<>(WalkKind.class);

    private static SpokenWalkScores.Heard heard(WalkKind kind) {
        return HEARD.computeIfAbsent(kind, each -> SpokenWalkScores.heard(each, 3, 1, 220, COUPE));
    }

    private static WalkScores ofEight(WalkKind kind) {
        return OF_EIGHT.computeIfAbsent(kind, each -> WalkScores.of(each, 8, 1, 220, COUPE));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "NEXT_DOOR, 9, 77, 86.3",
        "LOOSE, 9.7, 75, 80.2",
        "BURSTS, 1.3, 79, 91.6",
        "TWO_LAPS, 3.8, 55, 74.5",
        "WANDERING, 3.9, 55.4, 73",
        "TWO_CAMERAS, -0.4, 58.4, 82.7",
        "SUBJECTS, 1, 56.8, 85.4",
        "STATIONS, -0.1, 48.8, 82.6",
        "TWO_LAPS_THOROUGH, 4.7, 72.3, 85.6",
        "WANDERING_THOROUGH, 4.4, 79.3, 88.6",
        "TWO_CAMERAS_THOROUGH, 1, 81.9, 92.2",
        "SUBJECTS_THOROUGH, -0.5, 73.6, 92.1",
        "STATIONS_THOROUGH, -0.9, 71.5, 90.1",
        "PAIRS, 3.4, 59, 84.2",
    })
    void theTrueZoneIsAmongTheFirst(WalkKind kind, double overRule, double firstThree, double afterThreeVisits) {
        WalkScores scores = ofEight(kind);

        assertThat(100 * (scores.fresh().first() - scores.rule().first()))
                .as("%s", scores)
                .isGreaterThan(overRule);
        assertThat(100 * scores.fresh().firstThree()).as("%s", scores).isGreaterThan(firstThree);
        assertThat(100 * scores.learnt().firstThree()).as("%s", scores).isGreaterThan(afterThreeVisits);
        assertThat(scores.learnt().first())
                .as("%s", scores)
                .isGreaterThan(scores.rule().first());
    }

    /** Once two steps to a zone of the same kind, or to the other side, were pinned. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"SUBJECTS, 80.3", "PAIRS, 82.5"})
    void whoPinsInOrderFindsTheNextAmongTheFirstThree(WalkKind kind, double ofHundred) {
        InOrder found = InOrder.of(kind, 3, 1, COUPE);

        assertThat(100 * found.firstThree()).as("%s", found).isGreaterThan(ofHundred);
    }

    /**
     * With words at nine of ten stops, a fifth of them heard wrongly, and a tenth pinned; three inspectors, the first of the eight. Each kind holds what was
     * measured, a little below; the chances said are as far off as they were, a little above.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"NEXT_DOOR, 95, 7.2", "PAIRS, 81, 8.5", "STATIONS, 85, 9.4"})
    void whatWasSaidBringsTheTrueZoneAmongTheFirstThree(WalkKind kind, double ofHundred, double points) {
        SpokenWalkScores.Heard scores = heard(kind);
        Yardstick silent = Yardstick.mean(ofEight(kind).each().subList(0, 3));

        assertThat(100 * scores.spoken().firstThree()).as("%s", scores).isGreaterThan(ofHundred);
        assertThat(scores.spoken().first()).as("%s", scores).isGreaterThan(silent.first());
        assertThat(100 * scores.unpinned().firstThree()).as("%s", scores).isGreaterThan(70);
        assertThat(100 * scores.spoken().reliability().error()).as("%s", scores).isLessThan(points);
    }

    /** 85 of 100 among the first three are asked for: over the three kinds together they are reached, by pairs alone not by every inspector. */
    @Test
    void overTheKindsWithWordsWhatIsAskedIsReached() {
        Yardstick all = Yardstick.mean(Stream.of(WalkKind.NEXT_DOOR, WalkKind.PAIRS, WalkKind.STATIONS)
                .map(kind -> heard(kind).spoken())
                .toList());

        assertThat(100 * all.firstThree()).as("%s", all).isGreaterThan(85);
    }

    /** What is said against what is so, a little above what was measured with 8 inspectors; elsewhere it is off by more (docs/performance.md). */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "NEXT_DOOR, 5",
        "LOOSE, 5.1",
        "TWO_LAPS_THOROUGH, 3.8",
        "WANDERING_THOROUGH, 6.4",
        "SUBJECTS_THOROUGH, 5.2",
        "PAIRS, 4.8"
    })
    void probabilitiesHoldWithinSoManyPoints(WalkKind kind, double points) {
        WalkScores scores = ofEight(kind);

        assertThat(100 * scores.fresh().reliability().error()).as("%s", scores).isLessThan(points);
    }
}
