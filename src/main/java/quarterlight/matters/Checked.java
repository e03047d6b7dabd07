package quarterlight.matters;

import static quarterlight.language.Sentences.say;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.findings.NotLookedAt;
import quarterlight.rust.need.Load;
import quarterlight.rust.need.LoadTable;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.trial.TrialResult;

/**
 * How much of the car was looked at: the other half of every finding.
 *
 * @param zones that the car has, papers and the car as a whole apart
 * @param lookedAt of them: with a pinned photo, a reading, an outline, a sign, a mark, a trial or a statement that says something of them
 * @param panels outer panels that the gauge could read
 * @param measured of them, with a reading
 * @param structural zones that carry load in this construction
 * @param structuralUnseen of them, not looked at for rust
 * @param seen the zones looked at
 */
public record Checked(
        int zones, int lookedAt, int panels, int measured, int structural, int structuralUnseen, Set<ZoneId> seen) {
    public Checked {
        seen = Set.copyOf(seen);
    }

    static Checked of(Findings car) {
        List<Zone> zones = car.zones().stream()
                .filter(zone -> zone.group() != ZoneGroup.RECORD)
                .toList();
        Set<ZoneId> looked = looked(car);
        NotLookedAt missing = NotLookedAt.of(car);
        int structural = (int) zones.stream()
                .map(zone -> LoadTable.of(zone, car.visit().facts().car().body().construction()))
                .filter(load -> load == Load.MAIN || load == Load.SHELL)
                .count();
        return new Checked(
                zones.size(),
                (int) zones.stream().map(Zone::id).filter(looked::contains).count(),
                missing.panels(),
                missing.panels() - missing.unmeasured().size(),
                structural,
                missing.structural().size(),
                looked);
    }

    private static Set<ZoneId> looked(Findings car) {
        Set<ZoneId> looked = new HashSet<>();
        car.visit().pins().stream()
                .filter(row -> car.visit()
                        .photo(row.value().photo())
                        .filter(photo -> photo.setAside().isEmpty())
                        .isPresent())
                .forEach(row -> looked.add(row.value().zone()));
        car.visit().readings().forEach(row -> looked.add(row.value().zone()));
        car.visit().traces().forEach(row -> looked.add(row.value().zone()));
        car.visit().signs().forEach(row -> looked.add(row.value().zone()));
        car.visit().marks().forEach(row -> row.value().zone().ifPresent(looked::add));
        car.visit().trials().stream()
                .filter(row -> row.value().result() != TrialResult.NOT_TRIED)
                .forEach(row -> row.value().zone().ifPresent(looked::add));
        car.visit().standing().stream()
                .filter(statement -> !statement.is(Condition.NOT_LOOKED_AT))
                .forEach(statement -> looked.add(statement.zone()));
        return looked;
    }

    /** {@code Looked at 112 of 131 zones, measured 18 of 20 panels, 4 zones that carry load not checked for rust.} */
    public String sentence() {
        String panelsMeasured =
                panels == 0 ? say("matters.checked.no-panel") : say("matters.checked.panels", measured, panels);
        String carrying = structuralUnseen == 0
                ? say("matters.checked.all-load")
                : say("matters.checked.load", structuralUnseen, structural);
        return say("matters.checked", lookedAt, zones, panelsMeasured, carrying);
    }
}
