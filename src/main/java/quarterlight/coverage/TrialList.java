package quarterlight.coverage;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/**
 * The functions worth trying, by groups; common practice without a published source, and a list that the inspector may edit.
 * Immutable.
 *
 * @param items each name once, whatever its case
 */
public record TrialList(List<TrialItem> items) {
    /** Shown beside every item that asks for a running engine or a moving car. */
    public static String caution() {
        return say("coverage.trial-list.start-and-drive-a-car");
    }

    public TrialList {
        items = List.copyOf(items);
        if (items.stream().map(item -> key(item.item())).distinct().count() != items.size()) {
            throw new IllegalArgumentException("a function stands twice in the list of trials");
        }
    }

    private static String key(String item) {
        return item.strip().toLowerCase(Locale.ROOT);
    }

    /**
     * The groups with their items, those in which nothing is left out; items that need a running car only if it runs.
     *
     * @param runs whether the car runs
     */
    public Map<TrialGroup, List<TrialItem>> groups(boolean runs) {
        Map<TrialGroup, List<TrialItem>> groups = new LinkedHashMap<>();
        for (TrialGroup group : TrialGroup.values()) {
            List<TrialItem> shown = items.stream()
                    .filter(item -> item.group() == group && (runs || !item.onlyRunning()))
                    .toList();
            if (!shown.isEmpty()) {
                groups.put(group, shown);
            }
        }
        return groups;
    }

    /**
     * Whether the car runs, as far as its trials tell: false if the latest trial of an item that starts the engine says that it does not,
     * or that it was not tried; empty if there is no such trial.
     */
    public Optional<Boolean> runs(VisitRecord visit) {
        Set<String> starting = items.stream()
                .filter(item -> item.group() == TrialGroup.ENGINE && item.onlyRunning())
                .map(item -> key(item.item()))
                .collect(Collectors.toSet());
        List<TrialResult> results = visit.trials().stream()
                .map(Recorded::value)
                .filter(trial -> starting.contains(key(trial.item())))
                .map(Trial::result)
                .toList();
        if (results.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(results.stream()
                .anyMatch(result -> result == TrialResult.WORKS
                        || result == TrialResult.WORKS_WITH_A_FAULT
                        || result == TrialResult.BYPASSED));
    }

    /** Items of the list that no trial of the visit speaks of, and whose zone the car has. */
    public List<TrialItem> untried(VisitRecord visit, Set<ZoneId> zones, boolean runs) {
        Set<String> tried =
                visit.trials().stream().map(trial -> key(trial.value().item())).collect(Collectors.toSet());
        List<TrialItem> open = new ArrayList<>();
        groups(runs).values().forEach(group -> group.stream()
                .filter(item -> zones.contains(item.zone()) && !tried.contains(key(item.item())))
                .forEach(open::add));
        return List.copyOf(open);
    }
}
