package quarterlight.visit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/**
 * What a pin may show, in words to choose from: the usual words of the trade, extended by those used in the visit. Immutable.
 *
 * @param usual in the order in which they are offered
 */
public record PinSubjects(List<String> usual) {
    public PinSubjects {
        usual = List.copyOf(usual);
    }

    /** The usual words in their order, then those that pins of the visit bear besides, the most frequent first. */
    public List<String> offered(VisitRecord visit) {
        Map<String, String> spelled = new LinkedHashMap<>();
        Map<String, Integer> times = new LinkedHashMap<>();
        for (Recorded<Pin> pin : visit.pins()) {
            Optional<String> word = pin.value().shows().map(String::strip).filter(shown -> !shown.isEmpty());
            word.filter(shown -> usual.stream().noneMatch(known -> key(known).equals(key(shown))))
                    .ifPresent(shown -> {
                        spelled.putIfAbsent(key(shown), shown);
                        times.merge(key(shown), 1, Integer::sum);
                    });
        }
        List<String> all = new ArrayList<>(usual);
        times.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .forEach(entry -> all.add(spelled.get(entry.getKey())));
        return List.copyOf(all);
    }

    /**
     * The offered words of which a word begins with what was typed, those that begin with it themselves first; all of them if
     * nothing was typed.
     */
    public List<String> offered(VisitRecord visit, String typed) {
        String begun = key(typed);
        List<String> offered = offered(visit);
        List<String> found = new ArrayList<>(
                offered.stream().filter(word -> key(word).startsWith(begun)).toList());
        offered.stream()
                .filter(word -> !found.contains(word) && key(word).contains(" " + begun))
                .forEach(found::add);
        return List.copyOf(found);
    }

    private static String key(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }
}
