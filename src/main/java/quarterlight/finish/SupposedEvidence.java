package quarterlight.finish;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quarterlight.car.ZoneId;
import quarterlight.visit.trial.SignKind;

/**
 * Evidence of one zone that is not kept yet: what if the zone showed this too? Immutable.
 * <p>It joins what is kept as a row would: spots beside spots, and of a sign supposed twice "seen" wins.
 *
 * @param spotsUm further spots in um, finite
 * @param overRange further spots beyond the gauge's range
 * @param noMetal further spots without metal
 * @param signs signs supposed: true for seen, false for looked for and not there
 */
public record SupposedEvidence(
        ZoneId zone, List<Double> spotsUm, int overRange, int noMetal, Map<SignKind, Boolean> signs) {
    public SupposedEvidence {
        Objects.requireNonNull(zone, "zone");
        spotsUm = List.copyOf(spotsUm);
        signs = Map.copyOf(signs);
        if (overRange < 0 || noMetal < 0 || spotsUm.stream().anyMatch(um -> !Double.isFinite(um))) {
            throw new IllegalArgumentException(
                    "what is supposed of " + zone + " has a count below 0 or no finite value");
        }
    }

    /**
     * The evidence as it would stand.
     *
     * @return the same evidence if the zone takes no part in the finish history
     */
    public FinishEvidence with(FinishEvidence kept) {
        return kept.zone(zone).map(this::joined).map(kept::with).orElse(kept);
    }

    private ZoneEvidence joined(ZoneEvidence kept) {
        List<Double> spots = new ArrayList<>(kept.spotsUm());
        spots.addAll(spotsUm);
        Map<SignKind, Boolean> all = new EnumMap<>(SignKind.class);
        all.putAll(kept.signs());
        signs.forEach((kind, seen) -> all.merge(kind, seen, Boolean::logicalOr));
        return new ZoneEvidence(
                zone,
                kept.readable(),
                spots,
                kept.overRange() + overRange,
                kept.noMetal() + noMetal,
                all,
                kept.rust(),
                kept.places());
    }
}
