package quarterlight.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.trial.Trial;

/**
 * A function tried on at least one of the cars.
 *
 * @param item its name as first written; names count as equal whatever their case and outer blanks
 * @param a its latest trial on A, if any
 * @param b its latest trial on B, if any
 */
public record ComparedTrial(String item, Optional<Trial> a, Optional<Trial> b) {
    public ComparedTrial {
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(a, "a");
        Objects.requireNonNull(b, "b");
    }

    /** Items of A in their order, then those of B alone. */
    static List<ComparedTrial> of(VisitRecord a, VisitRecord b) {
        Map<String, Trial> ofA = latest(a);
        Map<String, Trial> ofB = latest(b);
        List<ComparedTrial> all = new ArrayList<>();
        ofA.forEach((key, trial) -> all.add(
                new ComparedTrial(trial.item().strip(), Optional.of(trial), Optional.ofNullable(ofB.get(key)))));
        ofB.forEach((key, trial) -> {
            if (!ofA.containsKey(key)) {
                all.add(new ComparedTrial(trial.item().strip(), Optional.empty(), Optional.of(trial)));
            }
        });
        return List.copyOf(all);
    }

    private static Map<String, Trial> latest(VisitRecord visit) {
        Map<String, Trial> latest = new LinkedHashMap<>();
        for (Recorded<Trial> row : visit.trials()) {
            latest.put(row.value().item().strip().toLowerCase(Locale.ROOT), row.value());
        }
        return latest;
    }
}
