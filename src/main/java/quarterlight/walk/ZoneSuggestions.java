package quarterlight.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import quarterlight.car.ZoneId;
import quarterlight.visit.PhotoId;

/**
 * Likely zones of photos that are not pinned yet, from the pinned photos around them in time.
 * <p>A continuous-time Markov chain over the zones: the walker moves to a zone next door, seldom to any; the expected number of
 * moves in a gap rises with the gap against the visit's usual gap. Pinned photos are observations. The probabilities come from
 * forward-backward smoothing (Rabiner, "A tutorial on hidden Markov models", Proc. IEEE 77, 1989; from memory); the chain over a
 * gap is exp(Q t) by uniformisation: a Poisson number of jumps. Near-duplicates count as one photo. Immutable.
 */
public final class ZoneSuggestions {
    private static final int MOST_SUGGESTIONS = 5;
    private static final int MOST_JUMPS = 8;

    private final List<ZoneId> zones;
    private final JumpMatrix jumps;
    private final WalkModel model;
    private final double movesPerUsualGap;

    /**
     * @param zones the car's zones
     * @param nextDoor which zones are next to each zone
     * @param habits what earlier visits tell
     */
    public ZoneSuggestions(List<ZoneId> zones, Map<ZoneId, Set<ZoneId>> nextDoor, WalkHabits habits, WalkModel model) {
        this.zones = List.copyOf(zones);
        this.model = model;
        jumps = new JumpMatrix(this.zones, nextDoor, habits, model);
        double moving =
                (model.habitPhotos() / model.photosPerStop() + habits.moved()) / (model.habitPhotos() + habits.gaps());
        movesPerUsualGap = -Math.log1p(-Math.min(moving, 0.95));
    }

    /**
     * At most five suggestions for each shot that is not pinned, best first; none if nothing is pinned at all.
     *
     * @param shots in any order; those of all cameras together
     */
    public Map<PhotoId, List<Suggestion>> suggest(List<Shot> shots) {
        List<List<Shot>> moments = moments(shots);
        Map<PhotoId, List<Suggestion>> answer = new LinkedHashMap<>();
        if (shots.stream().allMatch(shot -> shot.pinned().isEmpty())) {
            return answer;
        }
        double[][] seen = moments.stream().map(this::evidence).toArray(double[][]::new);
        double[] moves = expectedMoves(moments);
        double[][] posterior = smooth(seen, moves);
        for (int t = 0; t < moments.size(); t++) {
            List<Suggestion> best = best(posterior[t]);
            moments.get(t).stream()
                    .filter(shot -> shot.pinned().isEmpty())
                    .forEach(shot -> answer.put(shot.photo(), best));
        }
        return answer;
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
        double[] p = new double[zones.size()];
        Arrays.fill(p, 1);
        for (Shot shot : moment) {
            if (!shot.pinned().isEmpty()) {
                double other = (1 - model.pinSure()) / zones.size();
                for (int i = 0; i < p.length; i++) {
                    p[i] *= shot.pinned().contains(zones.get(i))
                            ? model.pinSure() / shot.pinned().size()
                            : other;
                }
            }
        }
        return normalised(p);
    }

    private double[] expectedMoves(List<List<Shot>> moments) {
        double[] gaps = new double[Math.max(0, moments.size() - 1)];
        for (int t = 0; t < gaps.length; t++) {
            gaps[t] = Math.max(
                    0,
                    moments.get(t + 1).get(0).seconds() - moments.get(t).get(0).seconds());
        }
        double[] sorted = gaps.clone();
        Arrays.sort(sorted);
        double usual = sorted.length == 0 ? 1 : Math.max(sorted[sorted.length / 2], 0.5);
        double[] raw = Arrays.stream(gaps)
                .map(gap -> Math.pow(gap / usual, model.gapPower()))
                .toArray();
        double[] capped = Arrays.stream(raw).map(x -> Math.min(x, 20)).toArray();
        double scale = scaleToMean(capped, 1 - Math.exp(-movesPerUsualGap));
        return Arrays.stream(capped)
                .map(x -> Math.min(model.mostMoves(), scale * x))
                .toArray();
    }

    /** The factor by which the mean chance of moving over all gaps becomes {@code moving}; found by bisection. */
    private static double scaleToMean(double[] x, double moving) {
        double low = 1e-6;
        double high = 1e3;
        for (int i = 0; i < 60; i++) {
            double middle = Math.sqrt(low * high);
            double mean = Arrays.stream(x)
                    .map(v -> -Math.expm1(-middle * v))
                    .average()
                    .orElse(moving);
            if (mean < moving) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.sqrt(low * high);
    }

    private double[][] smooth(double[][] seen, double[] moves) {
        int n = seen.length;
        double[][] forward = new double[n][];
        double[] start = new double[zones.size()];
        Arrays.fill(start, 1.0 / start.length);
        forward[0] = times(start, seen[0]);
        for (int t = 1; t < n; t++) {
            forward[t] = times(step(forward[t - 1], moves[t - 1], jumps::forward), seen[t]);
        }
        double[][] posterior = new double[n][];
        double[] later = new double[zones.size()];
        Arrays.fill(later, 1);
        for (int t = n - 1; t >= 0; t--) {
            posterior[t] = times(forward[t], later);
            if (t > 0) {
                later = normalised(step(times(later, seen[t]), moves[t - 1], jumps::backward));
            }
        }
        return posterior;
    }

    /** The chain over a gap: a Poisson number of jumps with the given mean. */
    private static double[] step(double[] v, double mean, UnaryOperator<double[]> jump) {
        double share = Math.exp(-mean);
        double[] out = new double[v.length];
        double[] moved = v;
        double used = 0;
        for (int k = 0; k <= MOST_JUMPS; k++) {
            double weight = k == MOST_JUMPS ? 1 - used : share;
            for (int i = 0; i < out.length; i++) {
                out[i] += weight * moved[i];
            }
            used += share;
            share *= mean / (k + 1);
            if (k < MOST_JUMPS) {
                moved = jump.apply(moved);
            }
        }
        return out;
    }

    private List<Suggestion> best(double[] p) {
        return IntStream.range(0, p.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -p[i]))
                .limit(MOST_SUGGESTIONS)
                .map(i -> new Suggestion(zones.get(i), p[i]))
                .toList();
    }

    private static double[] times(double[] a, double[] b) {
        double[] out = new double[a.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = a[i] * b[i];
        }
        return normalised(out);
    }

    private static double[] normalised(double[] p) {
        double sum = Arrays.stream(p).sum();
        double[] out = p.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] = sum > 0 ? out[i] / sum : 1.0 / out.length;
        }
        return out;
    }
}
