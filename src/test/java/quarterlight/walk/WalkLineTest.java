package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

class WalkLineTest {
    private static final WalkScores.Place COUPE = WalkScores.Place.coupe();
    private static final ZoneSuggestions SUGGESTIONS = COUPE.suggestions(WalkHabits.NONE);
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId DOOR = new ZoneId("door-front-left");

    @Test
    void pinByPinItSaysWhatIsSaidAllAtOnce() {
        long seed = 5;
        Random random = new Random(seed);
        List<Snap> snaps =
                WalkKind.NEXT_DOOR.inspector(120, COUPE.nextDoor(), seed).visit(random);
        WalkLine line = SUGGESTIONS.line(shots(snaps, Map.of()));
        Map<PhotoId, List<ZoneId>> pins = new HashMap<>();
        for (int step = 0; step < 25; step++) {
            int photo = random.nextInt(snaps.size());
            boolean takenBack = step % 6 == 5;
            if (takenBack) {
                pins.keySet().stream().min(PhotoId::compareTo).ifPresent(pins::remove);
            } else {
                pins.put(new PhotoId(photo + 1L), List.of(snaps.get(photo).zone()));
            }
            line.pins(pins);
        }

        same(line.suggestions(), SUGGESTIONS.suggest(shots(snaps, pins)));
        line.suggestions()
                .forEach((photo, list) -> assertThat(line.suggestions(photo)).isEqualTo(list));
    }

    @Test
    void nothingPinnedSuggestsNothingAndNoPhotosNeither() {
        assertThat(SUGGESTIONS.suggest(List.of())).isEmpty();
        assertThat(SUGGESTIONS.suggest(List.of(shot(1, 0), shot(2, 5)))).isEmpty();
        WalkLine line = SUGGESTIONS.line(List.of(shot(1, 0), shot(2, 5)));
        line.pins(Map.of(new PhotoId(1), List.of(HOOD)));
        assertThat(line.suggestions()).containsOnlyKeys(new PhotoId(2));
        line.pins(Map.of());
        assertThat(line.suggestions()).isEmpty();
    }

    @Test
    void chancesFallAndAddUpToNoMoreThanOne() {
        Map<PhotoId, List<Suggestion>> suggested =
                SUGGESTIONS.suggest(List.of(shot(1, 0, HOOD), shot(2, 5), shot(3, 300), shot(4, 900, DOOR)));

        suggested.values().forEach(list -> {
            assertThat(list).hasSize(24);
            assertThat(list.stream().mapToDouble(Suggestion::p).sum()).isBetween(0.0, 1 + 1e-9);
            for (int i = 1; i < list.size(); i++) {
                assertThat(list.get(i).p()).isLessThanOrEqualTo(list.get(i - 1).p());
            }
        });
    }

    @Test
    void aPhotoTakenInTheSameMomentShowsTheSameZone() {
        List<Shot> shots = new ArrayList<>(List.of(shot(1, 0, HOOD), shot(2, 0.4)));
        for (int i = 3; i < 20; i++) {
            shots.add(shot(i, 10 * i));
        }

        assertThat(SUGGESTIONS.suggest(shots).get(new PhotoId(2)).get(0).zone()).isEqualTo(HOOD);
    }

    @Test
    void aTwinIsOfTheMomentOfItsFirst() {
        Shot late = new Shot(new PhotoId(3), 4000, List.of(), Optional.of(new PhotoId(1)));
        Map<PhotoId, List<Suggestion>> suggested =
                SUGGESTIONS.suggest(List.of(shot(1, 0, HOOD), shot(2, 3990, DOOR), late));

        assertThat(suggested.get(new PhotoId(3)).get(0).zone()).isEqualTo(HOOD);
        assertThat(suggested.get(new PhotoId(3)).get(0).p()).isGreaterThan(0.9);
    }

    @Test
    void aPinOfTwoZonesSpeaksForBoth() {
        List<Shot> shots =
                List.of(new Shot(new PhotoId(1), 0, List.of(HOOD, DOOR), Optional.empty()), shot(2, 0.4), shot(3, 60));

        List<Suggestion> suggested = SUGGESTIONS.suggest(shots).get(new PhotoId(2));
        assertThat(suggested.subList(0, 2)).extracting(Suggestion::zone).containsExactlyInAnyOrder(HOOD, DOOR);
        assertThat(suggested.get(0).p()).isCloseTo(suggested.get(1).p(), within(0.05));
    }

    private static void same(Map<PhotoId, List<Suggestion>> found, Map<PhotoId, List<Suggestion>> wanted) {
        assertThat(found.keySet()).isEqualTo(wanted.keySet());
        wanted.forEach((photo, list) -> {
            for (int i = 0; i < list.size(); i++) {
                assertThat(found.get(photo).get(i).p())
                        .as("%s", photo)
                        .isCloseTo(list.get(i).p(), within(1e-4));
            }
        });
    }

    private static List<Shot> shots(List<Snap> snaps, Map<PhotoId, List<ZoneId>> pins) {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < snaps.size(); i++) {
            PhotoId id = new PhotoId(i + 1L);
            shots.add(new Shot(id, snaps.get(i).seconds(), pins.getOrDefault(id, List.of()), Optional.empty()));
        }
        return shots;
    }

    private static Shot shot(long id, double seconds, ZoneId... pinned) {
        return new Shot(new PhotoId(id), seconds, List.of(pinned), Optional.empty());
    }
}
