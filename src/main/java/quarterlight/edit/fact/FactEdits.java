package quarterlight.edit.fact;

import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.EditRefused;
import quarterlight.edit.row.RowLabels;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.fact.Fact;
import quarterlight.visit.fact.FactDraft;
import quarterlight.visit.fact.Facts;
import quarterlight.visit.row.CellRefused;

/**
 * The facts of a visit and its car, set by key and value as the command line and the window give them. An empty value
 * clears an optional fact and brings one that always has a value back to the usual.
 */
public final class FactEdits {
    private final ZoneCatalog catalog;

    public FactEdits(ZoneCatalog catalog) {
        this.catalog = Objects.requireNonNull(catalog, "catalog");
    }

    /** The keys there are, for messages and help; {@code substrate.ZONE} stands for one key per zone. */
    public List<String> keys() {
        return Stream.concat(Facts.all().stream().map(Fact::key), Stream.of(Facts.SUBSTRATE_OF + "ZONE"))
                .toList();
    }

    /**
     * The facts of a new visit. What is not given is the usual: finish unknown, steel, driver on the left.
     *
     * @param values by key; {@code car} and {@code style} must be there
     * @param computerZone the time zone unless one is given
     */
    public VisitFacts start(Map<String, String> values, ZoneId computerZone) throws EditRefused {
        FactDraft draft = new FactDraft();
        draft.put(Facts.TIMEZONE, Optional.of(computerZone));
        return applied(draft, values);
    }

    /** The facts with some of them set anew. */
    public VisitFacts apply(VisitFacts facts, Map<String, String> values) throws EditRefused {
        return applied(FactDraft.of(facts), values);
    }

    private VisitFacts applied(FactDraft draft, Map<String, String> values) throws EditRefused {
        try {
            for (Map.Entry<String, String> each : values.entrySet()) {
                if (!each.getKey().startsWith(Facts.SUBSTRATE_OF)) {
                    draft.set(fact(each.getKey()), each.getValue());
                }
            }
            for (Map.Entry<String, String> each : values.entrySet()) {
                if (each.getKey().startsWith(Facts.SUBSTRATE_OF)) {
                    setZoneSubstrate(draft, each.getKey(), each.getValue());
                }
            }
            return draft.facts();
        } catch (CellRefused e) {
            throw new EditRefused(e.column().orElse("facts"), e.reason());
        }
    }

    private Fact<?> fact(String key) throws EditRefused {
        return Facts.find(key)
                .orElseThrow(() -> new EditRefused(
                        key,
                        "There is no fact called \"" + key + "\". The facts are " + String.join(", ", keys()) + "."));
    }

    private void setZoneSubstrate(FactDraft draft, String key, String value) throws EditRefused, CellRefused {
        String name = key.substring(Facts.SUBSTRATE_OF.length());
        quarterlight.car.ZoneId zone = catalog.zonesOf(draft.body()).stream()
                .map(z -> z.id())
                .filter(id -> id.value().equals(name))
                .findFirst()
                .orElseThrow(() -> new EditRefused(
                        key,
                        key + " cannot be set: a car of this body has no zone \"" + name
                                + "\". Give a zone by its id."));
        draft.putSubstrate(zone, Facts.SUBSTRATE.form().read(key, value));
    }

    /**
     * Splits {@code KEY=VALUE} words; the value may be empty and may hold further equals signs.
     *
     * @throws EditRefused if a word has no equals sign, or a key stands twice
     */
    public static Map<String, String> assignments(List<String> words) throws EditRefused {
        Map<String, String> values = new LinkedHashMap<>();
        for (String word : words) {
            int equals = word.indexOf('=');
            if (equals < 1) {
                throw new EditRefused(word, "\"" + word + "\" is not a fact to set. Write KEY=VALUE.");
            }
            String key = word.substring(0, equals);
            if (values.put(key, word.substring(equals + 1)) != null) {
                throw new EditRefused(key, key + " is given twice. Give it once.");
            }
        }
        return values;
    }

    /** Sets facts as one edit; remarks, in sentences, on what no longer fits. */
    public List<String> set(VisitStore store, Map<String, String> values) throws EditRefused, VisitProblem {
        VisitRecord visit = store.read();
        VisitFacts facts = apply(visit.facts(), values);
        store.change(new FactLabel(new RowLabels(visit)).of(values), tx -> tx.setFacts(facts));
        return StrayZones.of(store.read(), catalog);
    }
}
