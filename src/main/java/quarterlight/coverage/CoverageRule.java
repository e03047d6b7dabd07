package quarterlight.coverage;

import java.util.Objects;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;

/**
 * One row of what a visit must bring. An empty set of groups, zones, styles or constructions does not narrow.
 *
 * @param want the kind of evidence
 * @param number how much of it each zone needs, 1 or more
 * @param groups zones of these groups
 * @param zones these zones
 * @param except but not these
 * @param finishOnly only outer panels that take part in the finish history
 * @param structuralOnly only zones that carry load
 * @param styles for cars of these styles
 * @param constructions for cars built so
 * @param why for the reader, in one sentence
 */
public record CoverageRule(
        EvidenceKind want,
        int number,
        Set<ZoneGroup> groups,
        Set<ZoneId> zones,
        Set<ZoneId> except,
        boolean finishOnly,
        boolean structuralOnly,
        Set<BodyStyle> styles,
        Set<Construction> constructions,
        String why) {
    public CoverageRule {
        Objects.requireNonNull(want, "want");
        Objects.requireNonNull(why, "why");
        if (number < 1) {
            throw new IllegalArgumentException("a visit brings 1 or more of what it must bring, not " + number);
        }
        groups = Set.copyOf(groups);
        zones = Set.copyOf(zones);
        except = Set.copyOf(except);
        styles = Set.copyOf(styles);
        constructions = Set.copyOf(constructions);
    }

    /** True if the rule speaks of this zone of a car of this body. */
    public boolean asksOf(Zone zone, Body body) {
        return (styles.isEmpty() || styles.contains(body.style()))
                && (constructions.isEmpty() || constructions.contains(body.construction()))
                && (groups.isEmpty() || groups.contains(zone.group()))
                && (zones.isEmpty() || zones.contains(zone.id()))
                && !except.contains(zone.id())
                && (!finishOnly || zone.finish())
                && (!structuralOnly || zone.structural());
    }
}
