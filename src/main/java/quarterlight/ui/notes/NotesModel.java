package quarterlight.ui.notes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import quarterlight.coverage.Phrases;
import quarterlight.coverage.TrialItem;
import quarterlight.coverage.TrialList;
import quarterlight.ui.kit.Listeners;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialNames;
import quarterlight.words.rule.SaidFacets;

/** What the Notes station knows beside the visit: the functions to try, sentences of earlier visits, and how they meet. Event thread only. */
final class NotesModel {
    /**
     * What was read from the settings folder.
     *
     * @param said what a sentence seems to say of a part of this car
     */
    record Lists(TrialList trials, List<String> phrases, Function<String, SaidFacets> said) {
        Lists {
            phrases = List.copyOf(phrases);
            Objects.requireNonNull(said, "said");
        }

        /** Lists without a reading of words. */
        Lists(TrialList trials, List<String> phrases) {
            this(trials, phrases, sentence -> SaidFacets.NONE);
        }
    }

    /**
     * One line of the trials: a function of the list, a trial of the visit, or both.
     *
     * @param group as shown; empty for a trial that no list names
     */
    record TrialLine(String item, Optional<TrialItem> listed, Optional<Recorded<Trial>> kept) {}

    private final Listeners listeners = new Listeners();
    private Lists lists = new Lists(new TrialList(List.of()), List.of());
    private Optional<Boolean> runs = Optional.empty();

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    void lists(Lists fresh) {
        lists = fresh;
        listeners.tell();
    }

    void wrote(String sentence) {
        List<String> more = new ArrayList<>(lists.phrases());
        more.add(sentence);
        lists = new Lists(lists.trials(), more, lists.said());
        listeners.tell();
    }

    /** What a sentence seems to say; to be offered, never kept unasked. */
    SaidFacets said(String sentence) {
        return lists.said().apply(sentence);
    }

    /** Whether groups for a running car are shown: as the user chose, else as the trials tell, else yes. */
    boolean runs(VisitRecord visit) {
        return runs.or(() -> lists.trials().runs(visit)).orElse(true);
    }

    void runs(boolean chosen) {
        runs = Optional.of(chosen);
        listeners.tell();
    }

    /**
     * Sentences to offer for what was typed, from earlier visits and of this one those of the same sort.
     *
     * @param notLookedAt true for why something was not looked at, false for all else
     */
    List<String> phrases(VisitRecord visit, String typed, boolean notLookedAt) {
        List<String> all = new ArrayList<>(lists.phrases());
        visit.statements().stream()
                .map(Recorded::value)
                .filter(one -> notLookedAt == one.is(Condition.NOT_LOOKED_AT))
                .map(Statement::text)
                .forEach(all::add);
        return Phrases.offered(all, typed);
    }

    /** The functions to try with what was found, by groups; then trials that the list does not name. */
    List<TrialLine> trials(VisitRecord visit, List<quarterlight.car.ZoneId> zones) {
        List<TrialLine> lines = new ArrayList<>();
        List<Recorded<Trial>> rest = new ArrayList<>(visit.trials());
        lists.trials()
                .groups(runs(visit))
                .values()
                .forEach(group -> group.forEach(item -> {
                    List<Recorded<Trial>> kept = rest.stream()
                            .filter(row -> same(row.value().item(), item.item()))
                            .toList();
                    rest.removeAll(kept);
                    if (kept.isEmpty() && zones.contains(item.zone())) {
                        lines.add(new TrialLine(item.item(), Optional.of(item), Optional.empty()));
                    }
                    kept.forEach(row -> lines.add(new TrialLine(item.item(), Optional.of(item), Optional.of(row))));
                }));
        rest.forEach(row ->
                lines.add(new TrialLine(row.value().item(), listed(row.value().item()), Optional.of(row))));
        return Collections.unmodifiableList(lines);
    }

    private Optional<TrialItem> listed(String item) {
        return lists.trials().items().stream()
                .filter(one -> same(one.item(), item))
                .findFirst();
    }

    /** The list's own name of a function that was typed as the window says it, so that it answers that line; else as it was typed. */
    String named(String typed) {
        return lists.trials().items().stream()
                .map(TrialItem::item)
                .filter(item -> same(item, typed) || same(TrialNames.said(item), typed))
                .findFirst()
                .orElse(typed.strip());
    }

    private static boolean same(String a, String b) {
        return a.strip().equalsIgnoreCase(b.strip());
    }
}
