package quarterlight.words.weigh;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import quarterlight.words.Draft;
import quarterlight.words.DraftKind;

/**
 * The weights of a logistic model over the rules and circumstances of a draft: its probability is that of being right in kind, place and
 * value. Each feature weighs for itself and once more together with the kind of the draft. Immutable.
 */
public record Weights(Map<String, Double> byFeature) {
    private static final double STEP = 0.15;

    public Weights {
        byFeature = Map.copyOf(byFeature);
    }

    /** The names under which a draft of a kind is weighed. */
    public static Set<String> names(DraftKind what, Collection<String> features) {
        Set<String> names = new LinkedHashSet<>();
        names.add("any");
        names.add(what.word());
        for (String feature : features) {
            names.add(feature);
            names.add(what.word() + "+" + feature);
        }
        return names;
    }

    public double p(DraftKind what, Collection<String> features) {
        double sum = 0;
        for (String name : names(what, features)) {
            sum += byFeature.getOrDefault(name, 0.0);
        }
        return 1 / (1 + Math.exp(-sum));
    }

    /** With what was learned on top of these. */
    public Weights plus(Map<String, Double> learned) {
        Map<String, Double> sum = new TreeMap<>(byFeature);
        learned.forEach((name, weight) -> sum.merge(name, weight, Double::sum));
        return new Weights(sum);
    }

    /**
     * What a confirmed, changed or dropped draft teaches: one step of the logistic model toward it.
     *
     * @param right true if the draft was kept as it stood
     */
    public Weights taught(Draft draft, boolean right) {
        double error = (right ? 1 : 0) - p(draft.what(), draft.features());
        Map<String, Double> next = new TreeMap<>(byFeature);
        for (String name : names(draft.what(), draft.features())) {
            next.merge(name, STEP * error, Double::sum);
        }
        return new Weights(next);
    }
}
