package quarterlight.rust.need;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.body.Construction;

/**
 * What the repair rule looks at in one zone.
 *
 * @param lookedAt whether the zone was looked at for rust
 * @param rusted whether any rust was found
 * @param percent rusted share, if known
 * @param grade D610 grade, if the share is known
 * @param holes how many holes
 * @param lost holes and rot
 * @param scale layered rust
 * @param pitting pitted metal
 * @param cracked whether a crack was found
 * @param zoneMm2 the zone's nominal area, if known
 * @param damage the gravest damage stated or traced
 */
public record RepairEvidence(
        Zone zone,
        Construction construction,
        boolean lookedAt,
        boolean rusted,
        OptionalDouble percent,
        OptionalInt grade,
        int holes,
        Loss lost,
        Loss scale,
        Loss pitting,
        boolean cracked,
        OptionalDouble zoneMm2,
        Damage damage) {
    private static final double ALL = 100;

    /** Damage other than rust, by its weight. */
    public enum Damage {
        NONE,
        SLIGHT,
        MAJOR,
        GRAVE
    }

    public RepairEvidence {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(construction, "construction");
    }

    Load load() {
        return LoadTable.of(zone, construction);
    }

    /** Some losses together as a share of the zone, percent; nothing if its area is not known. */
    Extent share(Loss... losses) {
        double mm2 = Stream.of(losses).mapToDouble(Loss::allMm2).sum();
        return new Extent(zoneMm2.isPresent() ? Math.min(ALL, ALL * mm2 / zoneMm2.getAsDouble()) : 0, false);
    }

    Extent crack() {
        return new Extent(0, cracked);
    }

    /** Damage of exactly this weight. */
    Extent damage(Damage weight) {
        return new Extent(0, damage == weight);
    }
}
