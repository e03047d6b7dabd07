package quarterlight.words;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import quarterlight.caption.WordsUnreadable;
import quarterlight.table.list.LexiconTable;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.rule.Listening;
import quarterlight.words.weigh.Weights;

/**
 * Fits the weights of the drafts on the narrated walks of the tests: ridge-regularized logistic regression over the features, toward
 * {@link #PRIOR}. {@code FitWeights OUT.csv}. Run it after the rules or the lexicon have changed, and look at the scores before and after.
 */
final class FitWeights {
    /** Where a weight is drawn to when few examples speak for it: talk of another car, of plans and of cars in general is no evidence. */
    private static final Map<String, Double> PRIOR = Map.of(
            "other-car-here",
            -2.4,
            "other-car-before",
            -0.5,
            "general-here",
            -0.9,
            "plan-here",
            -0.8,
            "chatter-here",
            -0.5,
            "told",
            -1.5,
            "claim+told",
            2.2,
            "claim+claimed-here",
            0.8,
            "claimed-here",
            -0.8,
            "claim+other-car-here",
            0.9);

    private static final double RIDGE = 5;
    private static final int MIN_COUNT = 3;
    private static final int ROUNDS = 4000;
    private static final double STEP = 0.02;

    private FitWeights() {}

    public static void main(String[] args) throws IOException, WordsUnreadable {
        Lexicon lexicon = LexiconTable.load();
        Weights flat = new Weights(Map.of());
        List<Set<String>> features = new ArrayList<>();
        List<Boolean> right = new ArrayList<>();
        for (GoldWalk walk : walks()) {
            List<Draft> drafts = Listening.drafts(walk.words, walk.car(), lexicon, flat);
            WalkScore score = WalkScore.of(walk, drafts, 0);
            score.judged().forEach((draft, hit) -> {
                features.add(Weights.names(draft.what(), draft.features()));
                right.add(hit);
            });
        }
        write(Path.of(args[0]), fit(features, right));
    }

    private static List<GoldWalk> walks() throws IOException, WordsUnreadable {
        List<GoldWalk> walks = new ArrayList<>();
        for (String name : List.of(
                "larkspur-coupe",
                "sorrel-sedan",
                "burdock-pickup",
                "yarrow-coupe",
                "thistle-wagon",
                "dogwood-sedan",
                "aster-convertible")) {
            walks.add(GoldWalk.of(name, List.of(name)));
        }
        walks.add(GoldWalk.of(
                "teasel-wagon",
                IntStream.rangeClosed(1, 8).mapToObj(i -> "teasel-wagon-" + i).toList()));
        return walks;
    }

    /** Gradient steps on the penalized log-likelihood; each example counts once. */
    private static Map<String, Double> fit(List<Set<String>> features, List<Boolean> right) {
        Map<String, Integer> counts = new HashMap<>();
        features.forEach(names -> names.forEach(name -> counts.merge(name, 1, Integer::sum)));
        Map<String, Double> weights = new TreeMap<>(PRIOR);
        counts.forEach((name, count) -> {
            if (count >= MIN_COUNT) {
                weights.putIfAbsent(name, 0.0);
            }
        });
        for (int round = 0; round < ROUNDS; round++) {
            Map<String, Double> gradient = new HashMap<>();
            weights.forEach((name, weight) -> gradient.put(name, -RIDGE * (weight - PRIOR.getOrDefault(name, 0.0))));
            for (int i = 0; i < features.size(); i++) {
                double sum = 0;
                for (String name : features.get(i)) {
                    sum += weights.getOrDefault(name, 0.0);
                }
                double error = (right.get(i) ? 1 : 0) - 1 / (1 + Math.exp(-sum));
                for (String name : features.get(i)) {
                    gradient.computeIfPresent(name, (k, g) -> g + error);
                }
            }
            gradient.forEach((name, g) ->
                    weights.merge(name, STEP * g / (RIDGE + counts.getOrDefault(name, 1) / 8.0), Double::sum));
        }
        return weights;
    }

    private static void write(Path out, Map<String, Double> weights) throws IOException {
        StringBuilder text = new StringBuilder("feature,weight\n");
        weights.forEach((name, weight) -> {
            if (Math.abs(weight) >= 0.005) {
                text.append(String.format(Locale.ROOT, "%s,%.3f%n", name, weight));
            }
        });
        Files.writeString(out, text);
    }
}
