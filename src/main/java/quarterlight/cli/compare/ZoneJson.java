package quarterlight.cli.compare;

import java.util.Optional;
import quarterlight.cli.text.GapJson;
import quarterlight.compare.ComparedZone;
import quarterlight.compare.Contrast;
import quarterlight.compare.Side;
import quarterlight.compare.ZoneFacts;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.table.json.JsonObject;
import quarterlight.thickness.ZoneThickness;
import quarterlight.units.Area;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.Statement;

/** A place of two cars as JSON; a car that has no such zone is null there. Pure functions. */
final class ZoneJson {
    private ZoneJson() {}

    /**
     * @param a key of the first car
     * @param b key of the second
     */
    static JsonObject of(ComparedZone zone, String a, String b) {
        return new JsonObject()
                .put("zone", zone.zone().id())
                .put("place", zone.place().label())
                .put("zone_" + a, zone.zoneA().map(one -> one.id()))
                .put("zone_" + b, zone.zoneB().map(one -> one.id()))
                .put("laid_together", zone.place().counterpart().map(one -> one.why()))
                .put(a, zone.a().map(ZoneJson::facts))
                .put(b, zone.b().map(ZoneJson::facts))
                .put(
                        "contrasts",
                        zone.contrasts().stream()
                                .map(one -> contrast(one, a, b))
                                .toList());
    }

    private static JsonObject facts(ZoneFacts facts) {
        return new JsonObject()
                .put("readings", facts.thickness().map(ZoneThickness::readings))
                .put("spots", facts.thickness().map(ZoneThickness::valueSpots))
                .put("mean_um", facts.thickness().flatMap(zone -> zone.meanUm().stream()
                        .boxed()
                        .findFirst()))
                .put("level_um", facts.levelUm())
                .put("finish_evidence", facts.finishEvidence())
                .put("refinish_score", judged(facts).map(ZoneHistory::refinishScore))
                .put("repair_score", judged(facts).map(ZoneHistory::repairScore))
                .put("looked_at", facts.rust().map(ZoneRust::lookedAt))
                .put("rust_mm2", facts.rust().flatMap(ZoneRust::rust).map(Area::mm2))
                .put("percent", facts.rust().flatMap(zone -> zone.percent().stream()
                        .boxed()
                        .findFirst()))
                .put("rust_grade_d610", facts.rust().flatMap(zone -> zone.gradeD610().stream()
                        .boxed()
                        .findFirst()))
                .put("holes", facts.rust().flatMap(zone -> zone.holes().stream()
                        .boxed()
                        .findFirst()))
                .put("need", facts.rust().flatMap(ZoneRust::need).map(RepairNeed::word))
                .put(
                        "statements",
                        facts.statements().stream().map(ZoneJson::statement).toList())
                .put("gaps", facts.gaps().stream().map(GapJson::of).toList());
    }

    /** What the panel's own evidence says; a prior is none. */
    private static Optional<ZoneHistory> judged(ZoneFacts facts) {
        return facts.history().filter(history -> facts.finishEvidence());
    }

    private static JsonObject statement(Statement statement) {
        return new JsonObject()
                .put("origin", statement.what().origin().map(Origin::word))
                .put("condition", statement.what().condition().map(Condition::word))
                .put("part", statement.details().part())
                .put("text", statement.text())
                .put("severity", statement.severity().map(one -> one.word()));
    }

    private static JsonObject contrast(Contrast contrast, String a, String b) {
        return new JsonObject()
                .put("aspect", contrast.aspect().word())
                .put("speaks_for", contrast.speaksFor().map(side -> side == Side.A ? a : b))
                .put("missing", contrast.missing().map(side -> side == Side.A ? a : b))
                .put("text", contrast.text());
    }
}
