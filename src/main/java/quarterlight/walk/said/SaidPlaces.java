package quarterlight.walk.said;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import quarterlight.car.ZoneId;
import quarterlight.walk.ZoneKin;

/**
 * What words say of where a photo was taken: how likely the words around its moment are if the walker stands at each zone, against words that say
 * nothing of it. What is said fades with the time between; a part on the wrong side is the usual slip. Immutable.
 */
public final class SaidPlaces {
    /** Share of what is said right at a photo that is about its zone. Judgment, a little below what drafts reach on narrated walks. */
    private static final double RELIABLE = 0.5;

    /** Share of that which is about the same place on the other side. Judgment. */
    private static final double OTHER_SIDE = 0.1;

    /** Within this time what was said counts for a third. Judgment, about the stay at one stop. */
    private static final double FADE_S = 12;

    private static final double FARTHEST_S = 5 * FADE_S;

    private final List<PlaceSaid> said;
    private final Map<ZoneId, Integer> index = new HashMap<>();
    private final List<ZoneId> zones;
    private final ZoneKin kin;

    public SaidPlaces(List<ZoneId> zones, ZoneKin kin, List<PlaceSaid> said) {
        this.zones = zones;
        this.kin = kin;
        for (int i = 0; i < zones.size(); i++) {
            index.put(zones.get(i), i);
        }
        this.said = said.stream()
                .filter(one -> one.zones().stream().anyMatch(index::containsKey))
                .sorted(Comparator.comparingDouble(PlaceSaid::seconds))
                .toList();
    }

    public boolean isEmpty() {
        return said.isEmpty();
    }

    /** Likelihood by zone, 1 where nothing speaks for it; {@code silent} itself if nothing was said around the moment. */
    public double[] around(double seconds, double[] silent) {
        if (said.isEmpty()) {
            return silent;
        }
        double[] likelihood = silent;
        for (PlaceSaid one : said) {
            double away = Math.abs(one.seconds() - seconds);
            if (away <= FARTHEST_S) {
                likelihood = likelihood == silent ? silent.clone() : likelihood;
                add(likelihood, one, RELIABLE * one.weight() * Math.exp(-away / FADE_S));
            }
        }
        return likelihood;
    }

    private void add(double[] likelihood, PlaceSaid one, double weight) {
        double each = weight * zones.size() / one.zones().size();
        for (ZoneId zone : one.zones()) {
            Integer at = index.get(zone);
            if (at != null) {
                likelihood[at] += each * (1 - OTHER_SIDE);
            }
            ZoneId mirror = kin.mirrors().get(zone);
            Integer other = mirror == null ? null : index.get(mirror);
            if (other != null && !one.zones().contains(mirror)) {
                likelihood[other] += each * OTHER_SIDE;
            }
        }
    }
}
