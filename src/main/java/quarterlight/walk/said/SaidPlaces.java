package quarterlight.walk.said;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import quarterlight.car.ZoneId;
import quarterlight.walk.ZoneKin;

/**
 * What words say of where photos were taken: how likely the words are if the walker stands at each zone, against words that say nothing of it. Each
 * place that was said counts once: shared among the two photos before and the two after it, the nearer the more, as the walker speaks on the way to a stop and
 * on the way from it; the chain of the walk carries it on. A part on the wrong side is the usual slip. Immutable.
 */
public final class SaidPlaces {
    /** Share of what is said right at a photo that is about its zone. Judgment, a little below what drafts reach on narrated walks. */
    private static final double RELIABLE = 0.7;

    /** Share of that which is about the same place on the other side. Judgment. */
    private static final double OTHER_SIDE = 0.1;

    /** Within this time what was said counts for a third. Judgment, about half the stay at one stop. */
    private static final double FADE_S = 10;

    /** How many moments on each side of what was said it may be about. Chosen on simulated walks (docs/performance.md). */
    private static final int BESIDE = 2;

    /** What is said minutes away from any photo says nothing. */
    private static final double LEAST = 0.01;

    private final Map<ZoneId, Integer> index = new HashMap<>();
    private final ZoneKin kin;
    private final Map<Integer, double[]> likelihoods = new HashMap<>();

    /**
     * Lays what was said beside the moments of a walk.
     *
     * @param said in any order
     * @param moments times of the photos, seconds from the same moment, ascending
     */
    public SaidPlaces(List<ZoneId> zones, ZoneKin kin, List<PlaceSaid> said, double[] moments) {
        this.kin = kin;
        for (int i = 0; i < zones.size(); i++) {
            index.put(zones.get(i), i);
        }
        for (PlaceSaid one : said) {
            int after = 0;
            while (after < moments.length && moments[after] < one.seconds()) {
                after++;
            }
            share(one, Math.max(0, after - BESIDE), Math.min(moments.length, after + BESIDE), moments);
        }
    }

    /** Shares what was said among the moments of a stretch; together they count as much as the nearest of them. */
    private void share(PlaceSaid one, int from, int to, double[] moments) {
        double most = 0;
        double all = 0;
        for (int t = from; t < to; t++) {
            double near = near(one, moments[t]);
            most = Math.max(most, near);
            all += near;
        }
        for (int t = from; t < to; t++) {
            add(t, one, most * near(one, moments[t]) / all);
        }
    }

    private static double near(PlaceSaid one, double moment) {
        return Math.exp(-Math.abs(one.seconds() - moment) / FADE_S);
    }

    /** True if nothing that was said is near any photo. */
    public boolean isEmpty() {
        return likelihoods.isEmpty();
    }

    /** At how many moments something was said. */
    public int moments() {
        return likelihoods.size();
    }

    /** Likelihood by zone of what was said about a moment, 1 where nothing speaks for it; {@code silent} itself if nothing was. */
    public double[] at(int moment, double[] silent) {
        return likelihoods.getOrDefault(moment, silent);
    }

    private void add(int moment, PlaceSaid one, double share) {
        if (!(share > LEAST)) {
            return;
        }
        double each =
                RELIABLE * one.weight() * share * index.size() / one.zones().size();
        for (ZoneId zone : one.zones()) {
            add(moment, zone, each * (1 - OTHER_SIDE));
            ZoneId mirror = kin.mirrors().getOrDefault(zone, zone);
            if (!one.zones().contains(mirror)) {
                add(moment, mirror, each * OTHER_SIDE);
            }
        }
    }

    private void add(int moment, ZoneId zone, double more) {
        if (index.containsKey(zone)) {
            double[] likelihood = likelihoods.computeIfAbsent(moment, t -> ones());
            likelihood[index.get(zone)] += more;
        }
    }

    private double[] ones() {
        double[] ones = new double[index.size()];
        Arrays.fill(ones, 1);
        return ones;
    }
}
