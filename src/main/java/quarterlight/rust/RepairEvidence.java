package quarterlight.rust;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.visit.TraceKind;

/**
 * What the repair rule looks at in one zone.
 *
 * @param lookedAt whether the zone was looked at for rust
 * @param kinds kinds of all traces on the zone
 * @param grade D610 grade, if the share is known
 * @param percent rusted share, if known
 * @param holes how many holes
 * @param largestHoleMm2 the largest of them, if any
 * @param lostPercent share of the zone that is hole or rot, if known
 * @param damage the gravest damage stated or traced
 */
record RepairEvidence(
        Zone zone,
        boolean lookedAt,
        Set<TraceKind> kinds,
        OptionalInt grade,
        OptionalDouble percent,
        int holes,
        OptionalDouble largestHoleMm2,
        OptionalDouble lostPercent,
        Damage damage) {
    /** Damage other than rust, by its weight. */
    enum Damage {
        NONE,
        SLIGHT,
        MAJOR,
        GRAVE
    }

    RepairEvidence {
        kinds = Set.copyOf(kinds);
    }

    boolean has(TraceKind kind) {
        return kinds.contains(kind);
    }
}
