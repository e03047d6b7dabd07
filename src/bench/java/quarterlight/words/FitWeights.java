package quarterlight.words;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import quarterlight.caption.WordsUnreadable;
import quarterlight.table.list.LexiconTable;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.rule.Listening;
import quarterlight.words.weigh.Weights;

/**
 * Fits the weights of the drafts on the narrated walks of the tests: ridge-regularized logistic regression over the features, toward
 * {@link #PRIOR}. {@code FitWeights OUT.csv}; {@code FitWeights each} fits on all walks but one and tries that one, each in turn. Run it after the rules or the lexicon have changed, and look at the scores before and after.
 */
final class FitWeights {
    /** Where a weight is drawn to when few examples speak for it: talk of another car, of plans and of cars in general is no evidence. */
    private static final Map<String, Double> PRIOR = Map.ofEntries(
            Map.entry("other-car-here", -4.0),
            Map.entry("other-car-before", -0.5),
            Map.entry("general-here", -0.9),
            Map.entry("plan-here", -0.8),
            Map.entry("chatter-here", -0.5),
            Map.entry("told", -1.5),
            Map.entry("claim+told", 2.2),
            Map.entry("claim+claimed-here", 0.8),
            Map.entry("claimed-here", -0.8),
            Map.entry("claim+other-car-here", 0.9),
            Map.entry("gauge+gauge-figures", 2.5));

    private static final double RIDGE = 5;
    private static final int MIN_COUNT = 3;
    private static final int ROUNDS = 600;
    private static final double STEP = 0.3;
    private static final List<String> OPEN = List.of(
            "larkspur-coupe",
            "sorrel-sedan",
            "burdock-pickup",
            "teasel-wagon",
            "yarrow-coupe",
            "thistle-wagon",
            "dogwood-sedan",
            "aster-convertible",
            "comfrey-pickup",
            "vetch-coupe",
            "bryony-pickup",
            "campion-coupe");

    private FitWeights() {}

    private record Example(Set<String> features, boolean right) {}

    public static void main(String[] args) throws IOException, WordsUnreadable {
        Lexicon lexicon = LexiconTable.load();
        Map<String, GoldWalk> walks = walks();
        Map<String, List<Example>> examples = new LinkedHashMap<>();
        walks.forEach((name, walk) -> examples.put(name, examples(walk, lexicon)));
        if (args[0].equals("each")) {
            each(walks, examples, lexicon);
        } else {
            write(
                    Path.of(args[0]),
                    fit(examples.values().stream().flatMap(List::stream).toList()));
        }
    }

    /** Fits on all walks but one and tries that one: what to expect of speech never heard. */
    private static void each(Map<String, GoldWalk> walks, Map<String, List<Example>> examples, Lexicon lexicon) {
        List<WalkScore> scores = new ArrayList<>();
        Map<Integer, double[]> bins = new TreeMap<>();
        walks.forEach((name, walk) -> {
            Weights weights = new Weights(fit(examples.entrySet().stream()
                    .filter(other -> !other.getKey().equals(name))
                    .flatMap(other -> other.getValue().stream())
                    .toList()));
            List<Draft> drafts = Listening.drafts(walk.words, walk.car(), lexicon, weights);
            WalkScore score = WalkScore.of(walk, drafts, 0.5);
            scores.add(score);
            double[] percent = WalkScore.percent(score);
            System.out.printf("%-20s recall %.1f precision %.1f%n", name, percent[0], percent[1]);
            WalkScore.of(walk, drafts, 0).judged().forEach((draft, hit) -> {
                double[] bin = bins.computeIfAbsent((int) Math.min(4, draft.p() * 5), k -> new double[3]);
                bin[0]++;
                bin[1] += draft.p();
                bin[2] += hit ? 1 : 0;
            });
        });
        double[] percent = WalkScore.percent(scores.toArray(WalkScore[]::new));
        System.out.printf("all but one, each in turn: recall %.1f precision %.1f%n", percent[0], percent[1]);
        bins.forEach((bin, sums) -> System.out.printf(
                "  p %.1f and more: %4.0f drafts, mean p %.2f, right %.2f%n",
                bin / 5.0, sums[0], sums[1] / sums[0], sums[2] / sums[0]));
    }

    private static List<Example> examples(GoldWalk walk, Lexicon lexicon) {
        List<Draft> drafts = Listening.drafts(walk.words, walk.car(), lexicon, new Weights(Map.of()));
        List<Example> examples = new ArrayList<>();
        WalkScore.of(walk, drafts, 0)
                .judged()
                .forEach((draft, hit) -> examples.add(new Example(Weights.names(draft.what(), draft.features()), hit)));
        return examples;
    }

    private static Map<String, GoldWalk> walks() throws IOException, WordsUnreadable {
        Map<String, GoldWalk> walks = new LinkedHashMap<>();
        for (String name : OPEN) {
            boolean memos = name.equals("teasel-wagon");
            walks.put(
                    name,
                    GoldWalk.of(
                            name,
                            memos
                                    ? IntStream.rangeClosed(1, 8)
                                            .mapToObj(i -> name + "-" + i)
                                            .toList()
                                    : List.of(name)));
        }
        return walks;
    }

    /** Gradient steps on the penalized log-likelihood, scaled by what each weight has seen; each example counts once. */
    private static Map<String, Double> fit(List<Example> examples) {
        Map<String, Integer> counts = new HashMap<>();
        examples.forEach(e -> e.features().forEach(name -> counts.merge(name, 1, Integer::sum)));
        List<String> names = new ArrayList<>(new TreeSet<>(PRIOR.keySet()));
        counts.forEach((name, count) -> {
            if (count >= MIN_COUNT && !PRIOR.containsKey(name)) {
                names.add(name);
            }
        });
        Map<String, Integer> at = new HashMap<>();
        names.forEach(name -> at.put(name, at.size()));
        int[][] features = examples.stream()
                .map(e -> e.features().stream()
                        .filter(at::containsKey)
                        .mapToInt(at::get)
                        .toArray())
                .toArray(int[][]::new);
        double[] prior =
                names.stream().mapToDouble(n -> PRIOR.getOrDefault(n, 0.0)).toArray();
        double[] weight = prior.clone();
        double[] moved = new double[weight.length];
        for (int round = 0; round < ROUNDS; round++) {
            double[] gradient = new double[weight.length];
            for (int k = 0; k < weight.length; k++) {
                gradient[k] = -RIDGE * (weight[k] - prior[k]);
            }
            for (int i = 0; i < features.length; i++) {
                double sum = 0;
                for (int k : features[i]) {
                    sum += weight[k];
                }
                double error = (examples.get(i).right() ? 1 : 0) - 1 / (1 + Math.exp(-sum));
                for (int k : features[i]) {
                    gradient[k] += error;
                }
            }
            for (int k = 0; k < weight.length; k++) {
                moved[k] = 0.9 * moved[k] + 0.1 * gradient[k] * gradient[k];
                weight[k] += STEP / (1 + round / 20.0) * gradient[k] / (Math.sqrt(moved[k]) + 0.5);
            }
        }
        Map<String, Double> weights = new TreeMap<>();
        names.forEach(name -> weights.put(name, weight[at.get(name)]));
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
