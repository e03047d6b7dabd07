package quarterlight.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import quarterlight.car.Body;
import quarterlight.car.BodyStyle;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.diagram.DiagramFile;
import quarterlight.diagram.Neighbors;
import quarterlight.table.ZoneTable;

/**
 * Study of the suggestions on simulated walks: per kind of walk, the rule of the nearest pin, the model without habits, and the model
 * after three earlier visits of the same inspector. Arguments: inspectors a kind (40), first seed (1), photos a visit (220).
 */
public final class WalkStudy {
    private WalkStudy() {}

    public static void main(String[] arguments) throws Exception {
        int inspectors = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 40;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        int photos = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 220;
        Body coupe = Body.usual(BodyStyle.COUPE);
        List<ZoneId> zones =
                ZoneTable.load().zonesOf(coupe).stream().map(Zone::id).toList();
        Map<ZoneId, Set<ZoneId>> nextDoor =
                Neighbors.of(DiagramFile.shipped(coupe)).map();
        for (WalkKind kind : WalkKind.values()) {
            List<Yardstick> rule = new ArrayList<>();
            List<Yardstick> fresh = new ArrayList<>();
            List<Yardstick> learnt = new ArrayList<>();
            double stops = 0;
            for (int i = 0; i < inspectors; i++) {
                Walker walker = kind.inspector(photos, nextDoor, seed + i);
                Random random = new Random(1000 + seed + i);
                WalkHabits habits = WalkHabits.NONE;
                for (int earlier = 0; earlier < 3; earlier++) {
                    habits = habits.plus(WalkHabits.of(Yardstick.allPinned(walker.visit(random))));
                }
                List<Snap> snaps = walker.visit(random);
                rule.add(Yardstick.ofNearest(snaps));
                fresh.add(suggest(zones, nextDoor, WalkHabits.NONE, snaps));
                learnt.add(suggest(zones, nextDoor, habits, snaps));
                stops += stops(snaps);
            }
            System.out.printf(
                    "%-12s photos %d stops %.0f  rule %s  model %s  after three %s%n",
                    kind,
                    rule.stream().mapToInt(Yardstick::photos).sum() / inspectors,
                    stops / inspectors,
                    Yardstick.mean(rule),
                    Yardstick.mean(fresh),
                    Yardstick.mean(learnt));
        }
    }

    private static int stops(List<Snap> snaps) {
        int stops = 1;
        for (int i = 1; i < snaps.size(); i++) {
            stops += snaps.get(i).zone().equals(snaps.get(i - 1).zone()) ? 0 : 1;
        }
        return stops;
    }

    private static Yardstick suggest(
            List<ZoneId> zones, Map<ZoneId, Set<ZoneId>> nextDoor, WalkHabits habits, List<Snap> snaps) {
        ZoneSuggestions suggestions = new ZoneSuggestions(zones, nextDoor, habits, WalkModel.V2);
        return Yardstick.of(snaps, suggestions.suggest(Yardstick.pinned(snaps)));
    }
}
