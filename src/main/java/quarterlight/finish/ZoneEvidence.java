package quarterlight.finish;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.rust.RustExtent;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.trial.SignKind;

/**
 * What is known of one panel's finish.
 *
 * @param readable false if the gauge cannot read the panel's substrate; its measured values then play no part
 * @param spotsUm one value per spot in um, finite, in any order
 * @param overRange spots beyond the gauge's range
 * @param noMetal spots where the gauge found no metal
 * @param signs signs that were looked for: true if seen, false if not there
 * @param rust how far rust goes, if the panel was looked at for rust
 * @param places where the spots lie, as far as it is known: those of {@code spotsUm} in their order, then those beyond the range
 */
public record ZoneEvidence(
        ZoneId zone,
        boolean readable,
        List<Double> spotsUm,
        int overRange,
        int noMetal,
        Map<SignKind, Boolean> signs,
        Optional<RustExtent> rust,
        List<ViewPoint> places) {
    /** Of a panel whose spots have no places. */
    public ZoneEvidence(
            ZoneId zone,
            boolean readable,
            List<Double> spotsUm,
            int overRange,
            int noMetal,
            Map<SignKind, Boolean> signs,
            Optional<RustExtent> rust) {
        this(zone, readable, spotsUm, overRange, noMetal, signs, rust, List.of());
    }

    public ZoneEvidence {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(rust, "rust");
        spotsUm = List.copyOf(spotsUm);
        signs = Map.copyOf(signs);
        places = List.copyOf(places);
        if (places.size() > spotsUm.size() + overRange) {
            throw new IllegalArgumentException("zone " + zone + " has more places than spots");
        }
        if (overRange < 0 || noMetal < 0 || spotsUm.stream().anyMatch(um -> !Double.isFinite(um))) {
            throw new IllegalArgumentException("zone " + zone + " has a count below 0 or a value that is not finite");
        }
    }

    /** A panel of which nothing is known. */
    public static ZoneEvidence none(ZoneId zone) {
        return new ZoneEvidence(zone, true, List.of(), 0, 0, Map.of(), Optional.empty());
    }

    /** What the model uses of the measured values: none where the gauge cannot read, and no magnet there either. */
    ZoneEvidence usable() {
        if (readable) {
            return this;
        }
        Map<SignKind, Boolean> asked = new EnumMap<>(SignKind.class);
        asked.putAll(signs);
        asked.remove(SignKind.WEAK_MAGNET);
        return new ZoneEvidence(zone, false, List.of(), 0, 0, asked, rust);
    }

    /** True if the zone carries a reading the gauge can take, or a sign: without either nothing is said of it. */
    public boolean isJudged() {
        ZoneEvidence used = usable();
        return used.hasValues() || used.noMetal > 0 || !used.signs.isEmpty();
    }

    /** How many spots have a value or lie beyond the range. */
    int spots() {
        return spotsUm.size() + overRange;
    }

    /** Where each spot lies, in their order; empty unless it is known of every one. */
    List<ViewPoint> allPlaces() {
        return places.size() == spots() ? places : List.of();
    }

    boolean hasValues() {
        return !spotsUm.isEmpty() || overRange > 0;
    }
}
