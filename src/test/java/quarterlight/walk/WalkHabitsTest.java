package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.visit.photo.PhotoId;

/** Moves, stops and gaps counted by hand on short walks; which walks are the same visit. */
class WalkHabitsTest {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId ROOF = new ZoneId("roof");

    /** Photos ten seconds apart; blank where one is not pinned. */
    private static WalkHabits walk(String... zones) {
        List<Shot> shots = new ArrayList<>();
        for (int i = zones.length - 1; i >= 0; i--) {
            List<ZoneId> pinned = zones[i].isEmpty() ? List.of() : List.of(new ZoneId(zones[i]));
            shots.add(new Shot(new PhotoId(i + 1L), 10 * i, pinned, Optional.empty()));
        }
        return WalkHabits.of(shots);
    }

    private static int sum(List<Integer> counts) {
        return counts.stream().mapToInt(Integer::intValue).sum();
    }

    @Test
    void movesAndStopsAreCountedBetweenNeighborsThatAreBothPinned() {
        WalkHabits habits = walk("hood", "hood", "roof", "", "hood", "roof", "roof");
        assertThat(habits.moves()).isEqualTo(Map.of(HOOD, Map.of(ROOF, 2)));
        assertThat(habits.stops()).isEqualTo(Map.of(HOOD, 2, ROOF, 2));
        assertThat(sum(habits.gaps().gaps())).isEqualTo(4);
        assertThat(sum(habits.gaps().moved())).isEqualTo(2);
    }

    /** A stop counts by its photos only where its beginning was seen. */
    @Test
    void howManyPhotosAStopHadIsKnownFromItsBeginningOn() {
        WalkHabits habits = walk("hood", "hood", "roof", "roof", "roof", "hood");
        assertThat(habits.gaps().reached().subList(0, 4)).containsExactly(2, 2, 1, 0);
        assertThat(habits.gaps().ended().subList(0, 4)).containsExactly(0, 1, 1, 0);
        WalkHabits open = walk("", "hood", "hood", "roof", "hood");
        assertThat(open.gaps().reached().subList(0, 2)).containsExactly(1, 0);
        assertThat(open.gaps().ended().subList(0, 2)).containsExactly(1, 0);
    }

    @Test
    void habitsOfTwoVisitsAddUp() {
        WalkHabits both = walk("hood", "roof").plus(walk("hood", "roof", "hood"));
        assertThat(both.moves()).isEqualTo(Map.of(HOOD, Map.of(ROOF, 2), ROOF, Map.of(HOOD, 1)));
        assertThat(both.stops()).isEqualTo(Map.of(HOOD, 3, ROOF, 2));
        assertThat(sum(both.gaps().gaps())).isEqualTo(3);
        assertThat(walk().moves()).isEmpty();
    }

    private static PastWalk past(BodyStyle style, int first, int count, String zone) {
        List<PastWalk.Moment> photos = new ArrayList<>();
        for (int i = first; i < first + count; i++) {
            photos.add(new PastWalk.Moment(
                    String.format("%012x", i), i, zone.isEmpty() ? List.of() : List.of(new ZoneId(zone))));
        }
        return new PastWalk(style, photos);
    }

    /** The same visit if half of the photos of the smaller are in both. */
    @Test
    void halfOfTheSmallerInBothMakesTheSameVisit() {
        PastWalk ten = past(BodyStyle.COUPE, 0, 10, "hood");
        assertThat(ten.sameVisit(past(BodyStyle.COUPE, 8, 4, "hood"))).isTrue();
        assertThat(ten.sameVisit(past(BodyStyle.COUPE, 9, 3, "hood"))).isFalse();
        assertThat(past(BodyStyle.COUPE, 8, 4, "hood").sameVisit(ten)).isTrue();
        assertThat(ten.sameVisit(past(BodyStyle.COUPE, 0, 0, "hood"))).isFalse();
        assertThat(past(BodyStyle.COUPE, 0, 0, "").sameVisit(past(BodyStyle.COUPE, 0, 0, "")))
                .isFalse();
    }

    @Test
    void onePinnedPhotoTellsNothingAndTwoDo() {
        assertThat(past(BodyStyle.COUPE, 0, 1, "hood").tellsNothing()).isTrue();
        assertThat(past(BodyStyle.COUPE, 0, 2, "hood").tellsNothing()).isFalse();
        assertThat(past(BodyStyle.COUPE, 0, 9, "").tellsNothing()).isTrue();
    }

    @Test
    void walksRoundCarsOfItsStyleCountAndOthersOnlyWhereThereIsNone() {
        PastWalk atHand = past(BodyStyle.COUPE, 0, 4, "hood");
        PastWalk sameCar = past(BodyStyle.COUPE, 0, 5, "engine");
        PastWalk coupe = past(BodyStyle.COUPE, 100, 3, "roof");
        PastWalk pickup = past(BodyStyle.PICKUP, 200, 3, "bed-floor");
        assertThat(PastWalk.habitsFor(atHand, List.of(sameCar, coupe, pickup)).stops())
                .isEqualTo(Map.of(ROOF, 1));
        assertThat(PastWalk.habitsFor(atHand, List.of(sameCar, pickup)).stops())
                .isEqualTo(Map.of(new ZoneId("bed-floor"), 1));
        assertThat(PastWalk.habitsFor(atHand, List.of(sameCar)).stops()).isEmpty();
    }

    @Test
    void aRememberedPhotoHasTwelveDigitsAndATime() {
        for (String digest : List.of("0123456789a", "0123456789abc", "0123456789AB")) {
            assertThatThrownBy(() -> new PastWalk.Moment(digest, 0, List.of()))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> new PastWalk.Moment("0123456789ab", Double.NaN, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new PastWalk.Moment("0123456789ab", 3, List.of()).seconds()).isEqualTo(3);
    }

    /** One plus three times e to the minus steps over ten, a step back as two. */
    @Test
    void theUsualWayCountsByItsSteps() {
        ZoneSuggestions.UsualWalk way =
                ZoneSuggestions.UsualWalk.of(List.of(HOOD, new ZoneId("engine"), new ZoneId("cowl"), ROOF, HOOD));
        assertThat(way.factor(HOOD, ROOF)).isCloseTo(1 + 3 * Math.exp(-0.3), within(1e-12));
        assertThat(way.factor(ROOF, HOOD)).isCloseTo(1 + 3 * Math.exp(-0.6), within(1e-12));
        assertThat(way.factor(ROOF, ROOF)).isCloseTo(4, within(1e-12));
        assertThat(way.factor(ROOF, new ZoneId("dash"))).isEqualTo(1);
        assertThat(way.factor(new ZoneId("dash"), ROOF)).isEqualTo(1);
    }
}
