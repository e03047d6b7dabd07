package quarterlight.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import quarterlight.walk.said.PlaceSaid;

/**
 * The scores of one kind of walk over many inspectors, with and without what they say on the way.
 *
 * @param silent the model without words
 * @param terse the same photos with words at three of four stops, a third of these twice
 * @param spoken with words at nine of ten stops, half of these twice
 * @param unpinned the same without a single pin
 * @param learnt with words, after three earlier visits of the same inspector
 */
public record SpokenWalkScores(
        Yardstick silent, Yardstick terse, Yardstick spoken, Yardstick unpinned, Yardstick learnt) {
    /** @param photos about how many a visit */
    public static SpokenWalkScores of(WalkKind kind, int inspectors, long seed, int photos, WalkScores.Place place) {
        List<Yardstick> silent = new ArrayList<>();
        List<Yardstick> terse = new ArrayList<>();
        List<Yardstick> spoken = new ArrayList<>();
        List<Yardstick> unpinned = new ArrayList<>();
        List<Yardstick> learnt = new ArrayList<>();
        ZoneSuggestions fresh = place.suggestions(WalkHabits.NONE);
        for (int i = 0; i < inspectors; i++) {
            Walker walker = kind.inspector(photos, place.nextDoor(), seed + i);
            Random random = new Random(1000 + seed + i);
            WalkHabits habits = WalkScores.afterThreeVisits(walker, random);
            List<Snap> snaps = walker.visit(random);
            List<Shot> shots = Yardstick.pinned(snaps);
            List<PlaceSaid> said = new Narrator(place, 0.9, 0.5, 2000 + seed + i).says(snaps);
            List<PlaceSaid> little = new Narrator(place, 0.75, 0.3, 3000 + seed + i).says(snaps);
            silent.add(Yardstick.of(snaps, fresh.suggest(shots)));
            terse.add(Yardstick.of(snaps, fresh.suggest(shots, little)));
            spoken.add(Yardstick.of(snaps, fresh.suggest(shots, said)));
            unpinned.add(Yardstick.of(snaps, fresh.suggest(open(shots), said)));
            learnt.add(Yardstick.of(snaps, place.suggestions(habits).suggest(shots, said)));
        }
        return new SpokenWalkScores(
                Yardstick.mean(silent),
                Yardstick.mean(terse),
                Yardstick.mean(spoken),
                Yardstick.mean(unpinned),
                Yardstick.mean(learnt));
    }

    /**
     * With words and the usual pins, and with words alone; what is silent stands in {@link WalkScores#each} of the same seed.
     *
     * @param photos about how many a visit
     */
    static Heard heard(WalkKind kind, int inspectors, long seed, int photos, WalkScores.Place place) {
        List<Yardstick> spoken = new ArrayList<>();
        List<Yardstick> unpinned = new ArrayList<>();
        ZoneSuggestions fresh = place.suggestions(WalkHabits.NONE);
        for (int i = 0; i < inspectors; i++) {
            Walker walker = kind.inspector(photos, place.nextDoor(), seed + i);
            Random random = new Random(1000 + seed + i);
            for (int earlier = 0; earlier < 3; earlier++) {
                walker.visit(random);
            }
            List<Snap> snaps = walker.visit(random);
            List<Shot> shots = Yardstick.pinned(snaps);
            List<PlaceSaid> said = new Narrator(place, 0.9, 0.5, 2000 + seed + i).says(snaps);
            spoken.add(Yardstick.of(snaps, fresh.suggest(shots, said)));
            unpinned.add(Yardstick.of(snaps, fresh.suggest(open(shots), said)));
        }
        return new Heard(Yardstick.mean(spoken), Yardstick.mean(unpinned));
    }

    /** The scores with words: a tenth pinned, and nothing. */
    record Heard(Yardstick spoken, Yardstick unpinned) {}

    static List<Shot> open(List<Shot> shots) {
        return shots.stream()
                .map(shot -> new Shot(shot.photo(), shot.seconds(), List.of(), shot.twinOf()))
                .toList();
    }
}
