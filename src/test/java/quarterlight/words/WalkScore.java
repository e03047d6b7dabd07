package quarterlight.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Counts how many drafts of a walk are right: the main figures of the scorer that comes with the narrations. A draft answers at most one
 * gold row, likelier drafts first, by the greatest assignment; drafts in another right form are let go; every other is false.
 */
final class WalkScore {
    private final GoldWalk walk;
    private final List<Draft> drafts;
    private final Map<Integer, Integer> rowOfDraft = new LinkedHashMap<>();
    private final Map<Integer, Integer> draftOfRow = new HashMap<>();
    private final Set<Integer> letGo = new HashSet<>();

    private WalkScore(GoldWalk walk, List<Draft> drafts) {
        this.walk = walk;
        this.drafts = drafts;
    }

    /** @param threshold drafts less likely than this do not count */
    static WalkScore of(GoldWalk walk, List<Draft> all, double threshold) {
        List<Draft> counted =
                all.stream().filter(d -> !d.withdrawn() && d.p() >= threshold).toList();
        WalkScore score = new WalkScore(walk, counted);
        score.judge();
        return score;
    }

    int gold() {
        return walk.rows.size();
    }

    int hits() {
        return rowOfDraft.size();
    }

    int wrong() {
        return drafts.size() - rowOfDraft.size() - letGo.size();
    }

    long hard() {
        return walk.rows.stream().filter(row -> row.hard).count();
    }

    long hardHits() {
        return draftOfRow.keySet().stream().filter(j -> walk.rows.get(j).hard).count();
    }

    /** False drafts made of the words of a row that is nothing. */
    long onNothing() {
        return wrongDrafts().stream()
                .filter(d -> walk.nothing.stream().anyMatch(row -> sameWords(d, row)))
                .count();
    }

    /** Which drafts are right and which are false; those let go are neither. */
    Map<Draft, Boolean> judged() {
        Map<Draft, Boolean> judged = new LinkedHashMap<>();
        for (int i = 0; i < drafts.size(); i++) {
            if (!letGo.contains(i)) {
                judged.put(drafts.get(i), rowOfDraft.containsKey(i));
            }
        }
        return judged;
    }

    List<Draft> wrongDrafts() {
        List<Draft> wrong = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            if (!rowOfDraft.containsKey(i) && !letGo.contains(i)) {
                wrong.add(drafts.get(i));
            }
        }
        return wrong;
    }

    private void judge() {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> -drafts.get(i).p()));
        Map<Integer, List<Integer>> edges = new HashMap<>();
        for (int i : order) {
            edges.put(i, edges(drafts.get(i)));
        }
        order.forEach(i -> place(i, edges, new HashSet<>()));
        draftOfRow.forEach((j, i) -> rowOfDraft.put(i, j));
        letGo(order, edges);
    }

    private List<Integer> edges(Draft draft) {
        List<Integer> near = new ArrayList<>();
        for (int j = 0; j < walk.rows.size(); j++) {
            GoldRow row = walk.rows.get(j);
            if (gap(draft, row) <= row.window && row.forms.stream().anyMatch(form -> RowFit.full(draft, form))) {
                near.add(j);
            }
        }
        near.sort(Comparator.comparingDouble(j -> gap(draft, walk.rows.get(j))));
        return near;
    }

    private boolean place(int i, Map<Integer, List<Integer>> edges, Set<Integer> tried) {
        for (int j : edges.get(i)) {
            if (tried.add(j) && (!draftOfRow.containsKey(j) || place(draftOfRow.get(j), edges, tried))) {
                draftOfRow.put(j, i);
                return true;
            }
        }
        return false;
    }

    private void letGo(List<Integer> order, Map<Integer, List<Integer>> edges) {
        Set<String> contents = new HashSet<>();
        rowOfDraft.keySet().forEach(i -> contents.add(content(drafts.get(i))));
        Set<String> taken = new HashSet<>();
        for (int i : order) {
            Draft draft = drafts.get(i);
            if (rowOfDraft.containsKey(i) || contents.contains(content(draft))) {
                continue;
            }
            boolean form = false;
            for (int j : edges.get(i)) {
                for (GoldRow.Form other : walk.rows.get(j).forms) {
                    boolean answered = draftOfRow.containsKey(j) && RowFit.full(drafts.get(draftOfRow.get(j)), other);
                    form |= !form && RowFit.full(draft, other) && !answered && taken.add(j + "|" + other);
                }
            }
            boolean extra = !form
                    && edges.get(i).isEmpty()
                    && walk.extra.stream()
                            .anyMatch(row -> sameWords(draft, row)
                                    && (row.forms.get(0).zone().isEmpty()
                                            || draft.what() == DraftKind.TRIAL
                                            || RowFit.zones(
                                                    draft.zones(),
                                                    row.forms.get(0).zone()))
                                    && taken.add("extra|" + row.text));
            if (form || extra) {
                letGo.add(i);
                contents.add(content(draft));
            }
        }
    }

    private static String content(Draft draft) {
        return draft.source()
                + (int) draft.atSeconds()
                + draft.what()
                + draft.zones()
                + new java.util.TreeMap<>(draft.facets());
    }

    private static double gap(Draft draft, GoldRow row) {
        if (!draft.source().equals(row.part)) {
            return Double.POSITIVE_INFINITY;
        }
        double end = Math.min(Math.max(draft.atSeconds(), draft.untilSeconds()), draft.atSeconds() + 30);
        return Math.max(0, Math.max(row.at - end, draft.atSeconds() - row.end));
    }

    private static boolean sameWords(Draft draft, GoldRow row) {
        List<String> a = GoldWalk.tokens(draft.words());
        List<String> b = new ArrayList<>(GoldWalk.tokens(row.text));
        int shorter = Math.min(a.size(), b.size());
        long both = a.stream().filter(b::remove).count();
        return gap(draft, row) <= row.window && both >= Math.min(2, shorter) && both >= 0.6 * shorter;
    }

    /** Recall and precision in percent over several walks. */
    static double[] percent(WalkScore... scores) {
        double hits = Arrays.stream(scores).mapToInt(WalkScore::hits).sum();
        double gold = Arrays.stream(scores).mapToInt(WalkScore::gold).sum();
        double wrong = Arrays.stream(scores).mapToInt(WalkScore::wrong).sum();
        return new double[] {100 * hits / gold, 100 * hits / (hits + wrong)};
    }
}
