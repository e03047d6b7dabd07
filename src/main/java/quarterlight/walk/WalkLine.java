package quarterlight.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;
import quarterlight.walk.pace.GapCounts;
import quarterlight.walk.pace.GapReadings;
import quarterlight.walk.said.SaidPlaces;

/**
 * The photos of a visit on one time line, with suggestions that follow the pins: after a pin only its surroundings are computed again.
 * <p>Near-duplicates count as one moment. Several hypotheses of the walk run side by side and count as the pins bear them out.
 * One thread at a time; made by {@link ZoneSuggestions#line}.
 */
public final class WalkLine {
    /** More than anybody reads: the likely ones go first when letters are typed, too. */
    private static final int MAX_SUGGESTIONS = 24;

    /** Those that are weighed by the walk alone. */
    private static final int LIKELIEST = 3;

    private final List<ZoneId> zones;
    private final double pinSure;
    private final List<List<Shot>> moments;
    private final Map<PhotoId, Integer> momentOf = new LinkedHashMap<>();
    private final Map<PhotoId, List<ZoneId>> pins = new HashMap<>();
    /** Zones pinned at each moment, of all its photos. */
    private final List<List<ZoneId>> pinnedAt = new ArrayList<>();

    /** At how many moments each zone is pinned. */
    private final Map<ZoneId, Integer> pinnedZones = new HashMap<>();

    private final double returns;
    private final ZoneSuggestions.UsualWalk usual;
    private final double[][] seen;
    private final double[] nothingSeen;
    private final SaidPlaces said;
    private final Hypotheses hypotheses;
    /** True where no earlier visit is known. */
    private final boolean isNew;

    WalkLine(
            List<ZoneId> zones,
            List<JumpMatrix> jumps,
            GapCounts gaps,
            WalkModel model,
            ZoneSuggestions.UsualWalk usual,
            List<Shot> shots,
            Function<double[], SaidPlaces> words) {
        this.zones = zones;
        pinSure = model.pinSure();
        returns = model.returns();
        this.usual = usual;
        moments = moments(shots);
        said = words.apply(
                moments.stream().mapToDouble(one -> one.get(0).seconds()).toArray());
        nothingSeen = new double[zones.size()];
        Arrays.fill(nothingSeen, 1);
        seen = new double[moments.size()][];
        for (int t = 0; t < moments.size(); t++) {
            for (Shot shot : moments.get(t)) {
                momentOf.put(shot.photo(), t);
                if (!shot.pinned().isEmpty()) {
                    pins.put(shot.photo(), shot.pinned());
                }
            }
            seen[t] = evidence(moments.get(t));
            pinnedAt.add(zonesOf(moments.get(t)));
            pinnedAt.get(t).forEach(zone -> pinnedZones.merge(zone, 1, Integer::sum));
        }
        isNew = gaps.total() < model.habitGaps();
        hypotheses = new Hypotheses(
                moments.isEmpty() ? List.of() : jumps,
                moments.isEmpty() ? List.of() : GapReadings.of(gapsSeconds(), gaps, model.habitGaps()),
                model,
                seen);
    }

    /**
     * Takes in the visit's pins as they stand now.
     *
     * @param now zones of each pinned photo, in the order of its pins; photos that are not on the line are passed over
     */
    public void pins(Map<PhotoId, List<ZoneId>> now) {
        int first = Integer.MAX_VALUE;
        int last = -1;
        for (Map.Entry<PhotoId, Integer> photo : momentOf.entrySet()) {
            List<ZoneId> before = pins.getOrDefault(photo.getKey(), List.of());
            List<ZoneId> after = List.copyOf(now.getOrDefault(photo.getKey(), List.of()));
            if (before.equals(after)) {
                continue;
            }
            pins.put(photo.getKey(), after);
            int t = photo.getValue();
            seen[t] = evidence(moments.get(t));
            pinnedAt.get(t).forEach(zone -> pinnedZones.computeIfPresent(zone, (z, n) -> n > 1 ? n - 1 : null));
            pinnedAt.set(t, zonesOf(moments.get(t)));
            pinnedAt.get(t).forEach(zone -> pinnedZones.merge(zone, 1, Integer::sum));
            first = Math.min(first, t);
            last = Math.max(last, t);
        }
        if (last >= 0) {
            hypotheses.update(first, last);
        }
    }

    /** At most 24 suggestions for each photo that is not pinned, best first; none if nothing is pinned and nothing was said. */
    public Map<PhotoId, List<Suggestion>> suggestions() {
        Map<PhotoId, List<Suggestion>> answer = new LinkedHashMap<>();
        if (knowsNothing()) {
            return answer;
        }
        double[] weights = hypotheses.weights();
        WalkTraits walk = hypotheses.traits(weights);
        for (int t = 0; t < moments.size(); t++) {
            List<PhotoId> open = moments.get(t).stream()
                    .map(Shot::photo)
                    .filter(photo -> pins.getOrDefault(photo, List.of()).isEmpty())
                    .toList();
            if (!open.isEmpty()) {
                List<Suggestion> best = at(t, weights, walk);
                open.forEach(photo -> answer.put(photo, best));
            }
        }
        return answer;
    }

    /** The suggestions for one photo, at once; pinned or not. None if nothing is pinned and nothing was said, or the photo is not on the line. */
    public List<Suggestion> suggestions(PhotoId photo) {
        Optional<Integer> moment = Optional.ofNullable(momentOf.get(photo));
        if (moment.isEmpty() || knowsNothing()) {
            return List.of();
        }
        double[] weights = hypotheses.weights();
        return at(moment.get(), weights, hypotheses.traits(weights));
    }

    private boolean knowsNothing() {
        return said.isEmpty() && pinnedAt.stream().allMatch(List::isEmpty);
    }

    /** What the chance of the first suggestion of a photo is brought to what is so by; for fits. */
    double[] grounds(PhotoId photo) {
        double[] weights = hypotheses.weights();
        int t = momentOf.get(photo);
        double said = asRead(t, weights).get(0).p();
        WalkTraits walk = hypotheses.traits(weights);
        return isNew ? Calibration.grounds(said, walk, talk(t)) : Calibration.groundsOfKnown(said, walk, talk(t));
    }

    /** What the chains say of a photo, before it is brought to what is so. */
    List<Suggestion> asRead(PhotoId photo) {
        return asRead(momentOf.get(photo), hypotheses.weights());
    }

    private List<Suggestion> at(int t, double[] weights, WalkTraits walk) {
        List<Suggestion> best = asRead(t, weights);
        if (!isNew) {
            return Calibration.calibratedOfKnown(best, walk, talk(t));
        }
        List<Suggestion> calibrated =
                said.isEmpty() ? Calibration.calibrated(best, walk) : Calibration.calibrated(best, walk, talk(t));
        return byTheUsualWay(t, calibrated);
    }

    private Calibration.Talk talk(int t) {
        return new Calibration.Talk(
                (double) said.moments() / moments.size(),
                said.at(t, nothingSeen) == nothingSeen ? 0 : 1,
                pinnedAt.stream().allMatch(List::isEmpty) ? 1 : 0);
    }

    private List<Suggestion> asRead(int t, double[] weights) {
        double[] chances = new double[zones.size()];
        for (int k = 0; k < weights.length; k++) {
            hypotheses.chain(k).addChances(t, weights[k], chances);
        }
        discountReturns(t, chances);
        normalize(chances);
        return best(chances);
    }

    private double seconds(int t) {
        return moments.get(t).get(0).seconds();
    }

    private List<ZoneId> zonesOf(List<Shot> moment) {
        return moment.stream()
                .flatMap(shot -> pins.getOrDefault(shot.photo(), List.of()).stream())
                .toList();
    }

    /** Zones that are pinned at other moments than those around this one were photographed already: a return is seldom. */
    private void discountReturns(int t, double[] chances) {
        int before = t;
        while (before > 0 && pinnedAt.get(before).isEmpty()) {
            before--;
        }
        int after = t;
        while (after + 1 < pinnedAt.size() && pinnedAt.get(after).isEmpty()) {
            after++;
        }
        Set<ZoneId> here = new HashSet<>(pinnedAt.get(before));
        here.addAll(pinnedAt.get(after));
        for (int i = 0; i < chances.length; i++) {
            if (pinnedZones.containsKey(zones.get(i)) && !here.contains(zones.get(i))) {
                chances[i] *= returns;
            }
        }
    }

    /** Where nothing is known of the user, of what stands behind the first three goes first what comes soon on the usual way. */
    private List<Suggestion> byTheUsualWay(int t, List<Suggestion> best) {
        int before = t - 1;
        while (before >= 0 && pinnedAt.get(before).isEmpty()) {
            before--;
        }
        if (before < 0 || best.size() <= LIKELIEST) {
            return best;
        }
        ZoneId last = pinnedAt.get(before).get(0);
        double most = best.get(LIKELIEST - 1).p();
        List<Suggestion> rest = best.subList(LIKELIEST, best.size());
        double all = rest.stream().mapToDouble(Suggestion::p).sum();
        double weighed = rest.stream()
                .mapToDouble(one -> one.p() * usual.factor(last, one.zone()))
                .sum();
        List<Suggestion> ordered = new ArrayList<>(best.subList(0, LIKELIEST));
        rest.stream()
                .map(one -> new Suggestion(
                        one.zone(), Math.min(most, one.p() * usual.factor(last, one.zone()) * all / weighed)))
                .sorted(Comparator.comparingDouble(Suggestion::p).reversed())
                .forEach(ordered::add);
        return List.copyOf(ordered);
    }

    private static void normalize(double[] chances) {
        double sum = Arrays.stream(chances).sum();
        for (int i = 0; i < chances.length; i++) {
            chances[i] /= sum;
        }
    }

    /** Shots in time order, near-duplicates gathered into the moment of the first. */
    private static List<List<Shot>> moments(List<Shot> shots) {
        List<Shot> inTime = new ArrayList<>(shots);
        inTime.sort(Comparator.comparingDouble(Shot::seconds).thenComparing(Shot::photo));
        Map<PhotoId, List<Shot>> home = new HashMap<>();
        List<List<Shot>> moments = new ArrayList<>();
        for (Shot shot : inTime) {
            Optional<List<Shot>> twins = shot.twinOf().map(home::get);
            List<Shot> moment = twins.orElseGet(() -> {
                List<Shot> fresh = new ArrayList<>();
                moments.add(fresh);
                return fresh;
            });
            moment.add(shot);
            home.put(shot.photo(), moment);
        }
        return moments;
    }

    private double[] evidence(List<Shot> moment) {
        List<List<ZoneId>> pinned = moment.stream()
                .map(shot -> pins.getOrDefault(shot.photo(), List.of()))
                .filter(list -> !list.isEmpty())
                .toList();
        if (pinned.isEmpty()) {
            return said.at(momentOf.get(moment.get(0).photo()), nothingSeen);
        }
        double[] p = new double[zones.size()];
        Arrays.fill(p, 1);
        for (List<ZoneId> list : pinned) {
            double other = (1 - pinSure) / zones.size();
            for (int i = 0; i < p.length; i++) {
                p[i] *= list.contains(zones.get(i)) ? pinSure / list.size() : other;
            }
        }
        double sum = Arrays.stream(p).sum();
        return Arrays.stream(p).map(x -> sum > 0 ? x / sum : 1).toArray();
    }

    private double[] gapsSeconds() {
        double[] gaps = new double[moments.size() - 1];
        for (int t = 0; t < gaps.length; t++) {
            gaps[t] = seconds(t + 1) - seconds(t);
        }
        return gaps;
    }

    private List<Suggestion> best(double[] chances) {
        List<Suggestion> best = new ArrayList<>();
        for (int i = 0; i < chances.length; i++) {
            if (best.size() == MAX_SUGGESTIONS
                    && chances[i] <= best.get(MAX_SUGGESTIONS - 1).p()) {
                continue;
            }
            int place = best.size();
            while (place > 0 && best.get(place - 1).p() < chances[i]) {
                place--;
            }
            best.add(place, new Suggestion(zones.get(i), chances[i]));
            if (best.size() > MAX_SUGGESTIONS) {
                best.remove(MAX_SUGGESTIONS);
            }
        }
        return List.copyOf(best);
    }
}
