package quarterlight.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.diagram.Neighbors;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.CoverageTable;

/**
 * The scores of one kind of walk over many inspectors.
 *
 * @param rule the rule of the pinned photo nearest in time
 * @param fresh the model, knowing no earlier visit
 * @param learnt the model after three earlier visits of the same inspector
 * @param each the model by inspector, knowing no earlier visit
 */
public record WalkScores(Yardstick rule, Yardstick fresh, Yardstick learnt, List<Yardstick> each) {
    public WalkScores {
        each = List.copyOf(each);
    }

    /** A usual coupe. */
    public record Place(List<ZoneId> zones, Map<ZoneId, Set<ZoneId>> nextDoor, ZoneKin kin) {
        public static Place coupe() {
            Body coupe = Body.usual(BodyStyle.COUPE);
            try {
                List<Zone> zones = ZoneTable.load().zonesOf(coupe);
                return new Place(
                        zones.stream().map(Zone::id).toList(),
                        Neighbors.of(DiagramFile.shipped(coupe)).map(),
                        ZoneKin.of(zones).inTurn(CoverageTable.load().walk()));
            } catch (DiagramRefused e) {
                throw new AssertionError(e);
            }
        }

        public ZoneSuggestions suggestions(WalkHabits habits) {
            return new ZoneSuggestions(zones, nextDoor, kin, habits, WalkModel.V5)
                    .along(CoverageTable.load().walk());
        }
    }

    /** What is known of a walker after three visits. */
    static WalkHabits afterThreeVisits(Walker walker, Random random) {
        WalkHabits habits = WalkHabits.NONE;
        for (int earlier = 0; earlier < 3; earlier++) {
            habits = habits.plus(WalkHabits.of(Yardstick.allPinned(walker.visit(random))));
        }
        return habits;
    }

    /** @param photos about how many a visit */
    public static WalkScores of(WalkKind kind, int inspectors, long seed, int photos, Place place) {
        List<Yardstick> rule = new ArrayList<>();
        List<Yardstick> fresh = new ArrayList<>();
        List<Yardstick> learnt = new ArrayList<>();
        ZoneSuggestions unknown = place.suggestions(WalkHabits.NONE);
        for (int i = 0; i < inspectors; i++) {
            Walker walker = kind.inspector(photos, place.nextDoor(), seed + i);
            Random random = new Random(1000 + seed + i);
            WalkHabits habits = afterThreeVisits(walker, random);
            List<Snap> snaps = walker.visit(random);
            List<Shot> shots = Yardstick.pinned(snaps);
            rule.add(Yardstick.ofNearest(snaps));
            fresh.add(Yardstick.of(snaps, unknown.suggest(shots)));
            learnt.add(Yardstick.of(snaps, place.suggestions(habits).suggest(shots)));
        }
        return new WalkScores(Yardstick.mean(rule), Yardstick.mean(fresh), Yardstick.mean(learnt), fresh);
    }
}
