package quarterlight.cli.compare;

import quarterlight.compare.CarSummary;
import quarterlight.marks.Contradiction;
import quarterlight.rust.need.RepairNeed;
import quarterlight.table.json.JsonObject;

/** One car of a pair as a whole, as JSON. Pure functions. */
final class SummaryJson {
    private SummaryJson() {}

    static JsonObject of(CarSummary car) {
        JsonObject needs = new JsonObject();
        for (RepairNeed need : RepairNeed.values()) {
            needs.put(need.word(), car.needs().getOrDefault(need, 0));
        }
        return new JsonObject()
                .put("name", car.name())
                .put("panels", car.panels())
                .put("measured", car.measured())
                .put("rust_looked_at", car.rustLookedAt())
                .put("holes", car.holes())
                .put("needs", needs)
                .put("gaps", car.gaps().size())
                .put("dates_judged", car.datesJudged())
                .put(
                        "date_contradictions",
                        car.dateContradictions().stream()
                                .map(SummaryJson::contradiction)
                                .toList())
                .put("only_here", car.onlyHere().stream().map(zone -> zone.id()).toList());
    }

    private static JsonObject contradiction(Contradiction contradiction) {
        return new JsonObject()
                .put("kind", contradiction.kind().word())
                .put("what", contradiction.what())
                .put("zone", contradiction.zone())
                .put("sentence", contradiction.sentence());
    }
}
