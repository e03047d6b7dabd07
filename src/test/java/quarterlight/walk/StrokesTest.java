package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterlight.car.Zone;
import quarterlight.car.ZoneFinder;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.DriveSide;
import quarterlight.table.ZoneTable;
import quarterlight.visit.photo.PhotoId;

/**
 * A scripted walk through 300 photos from the first to the last: how many keys are struck until all are pinned. A number key takes one of
 * nine suggestions; else the initials of the zone are typed until the finder has it among its first nine, and a number key takes it. The next unpinned photo comes up by itself; near-duplicates are pinned together. Nothing is known of earlier visits. Every build
 * walks the habits that are hardest to foresee, {@code -Dquarterlight.walks=all} walks all.
 */
class StrokesTest {
    private static final WalkScores.Place COUPE = WalkScores.Place.coupe();
    private static final double MAX_PER_PHOTO = 1.5;
    private static final int ROWS = 9;
    private static final double LOOKS_ALIKE = 0.15;

    private final ZoneFinder finder =
            new ZoneFinder(ZoneTable.load().zonesOf(Body.usual(BodyStyle.COUPE)), DriveSide.LEFT);

    static Set<WalkKind> kinds() {
        return "all".equals(System.getProperty("quarterlight.walks"))
                ? EnumSet.allOf(WalkKind.class)
                : EnumSet.of(
                        WalkKind.NEXT_DOOR, WalkKind.WANDERING, WalkKind.SUBJECTS, WalkKind.STATIONS, WalkKind.PAIRS);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void threeHundredPhotosTakeAtMostThreeStrokesForTwo(WalkKind kind) {
        Random random = new Random(3);
        List<Snap> snaps = kind.inspector(340, COUPE.nextDoor(), 11).visit(random);
        snaps = snaps.subList(0, Math.min(300, snaps.size()));
        List<Shot> shots = shots(snaps, random);
        WalkLine line = COUPE.suggestions(WalkHabits.NONE).line(shots);
        Map<PhotoId, List<ZoneId>> pins = new HashMap<>();
        int strokes = 0;
        for (int i = 0; i < shots.size(); i++) {
            if (pins.containsKey(shots.get(i).photo())) {
                continue;
            }
            ZoneId truth = snaps.get(i).zone();
            List<Suggestion> likely = line.suggestions(shots.get(i).photo());
            boolean suggested =
                    likely.stream().limit(ROWS).anyMatch(one -> one.zone().equals(truth));
            strokes += suggested ? 1 : typed(truth, likely);
            pins.putAll(withTwins(shots, i, truth));
            line.pins(pins);
        }

        assertThat((double) strokes / shots.size()).isLessThanOrEqualTo(MAX_PER_PHOTO);
        assertThat(pins).hasSameSizeAs(shots);
    }

    private int typed(ZoneId truth, List<Suggestion> likely) {
        Map<ZoneId, Double> chances = likely.stream().collect(Collectors.toMap(Suggestion::zone, Suggestion::p));
        String initials = truth.value().replaceAll("([a-z])[a-z]*-?", "$1");
        String text = initials.length() > 1 ? initials : truth.value();
        for (int n = 1; n <= text.length(); n++) {
            int place = finder.matches(text.substring(0, n), zone -> chances.getOrDefault(zone, 0.0)).stream()
                    .map(Zone::id)
                    .toList()
                    .indexOf(truth);
            if (place >= 0 && place < ROWS) {
                return n + 1;
            }
        }
        throw new AssertionError(truth + " is not found by " + text);
    }

    private static Map<PhotoId, List<ZoneId>> withTwins(List<Shot> shots, int first, ZoneId zone) {
        PhotoId id = shots.get(first).photo();
        return shots.stream()
                .filter(shot -> shot.photo().equals(id) || shot.twinOf().equals(Optional.of(id)))
                .collect(Collectors.toMap(Shot::photo, shot -> List.of(zone)));
    }

    /** Now and then a photo looks like the one before it of the same stop. */
    private static List<Shot> shots(List<Snap> snaps, Random random) {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < snaps.size(); i++) {
            boolean twin =
                    i > 0 && snaps.get(i).zone().equals(snaps.get(i - 1).zone()) && random.nextDouble() < LOOKS_ALIKE;
            Optional<PhotoId> of = twin
                    ? Optional.of(
                            shots.get(i - 1).twinOf().orElse(shots.get(i - 1).photo()))
                    : Optional.empty();
            shots.add(new Shot(new PhotoId(i + 1L), snaps.get(i).seconds(), List.of(), of));
        }
        return shots;
    }
}
