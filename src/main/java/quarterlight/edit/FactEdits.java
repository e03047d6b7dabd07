package quarterlight.edit;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiConsumer;
import quarterlight.car.Body;
import quarterlight.car.BodyStyle;
import quarterlight.car.Construction;
import quarterlight.car.DriveSide;
import quarterlight.car.EnginePlace;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneCatalog;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;

/**
 * The facts of a visit and its car, set by key and value as the command line and the window give them. An empty value
 * clears an optional fact and brings one that always has a value back to the usual. Ranges are wide: they catch a wrong
 * unit or a slip of the hand, not an unusual car.
 */
public final class FactEdits {
    private static final String SUBSTRATE_OF = "substrate.";

    private final ZoneCatalog catalog;
    private final Map<String, Setter> setters = new LinkedHashMap<>();

    /** Puts a value into a draft, or says why not. */
    private interface Setter {
        void set(FactDraft draft, String value) throws EditRefused;
    }

    public FactEdits(ZoneCatalog catalog) {
        this.catalog = Objects.requireNonNull(catalog, "catalog");
        addCarKeys();
        addSizeKeys();
        addVisitKeys();
    }

    private void addCarKeys() {
        setters.put("car", (d, v) -> d.car = required("car", v));
        setters.put("style", (d, v) -> d.style = Optional.of(FactValues.word(BodyStyle.class, "style", v)));
        setters.put("year", (d, v) -> d.year = FactValues.year("year", v));
        setters.put("built", (d, v) -> d.built = FactValues.built("built", v));
        setters.put(
                "finish",
                (d, v) -> d.finish =
                        v.isBlank() ? FinishProfile.UNKNOWN : FactValues.word(FinishProfile.class, "finish", v));
        setters.put(
                "construction",
                (d, v) -> d.construction = v.isBlank()
                        ? Optional.empty()
                        : Optional.of(FactValues.word(Construction.class, "construction", v)));
        setters.put(
                "engine",
                (d, v) -> d.engine = v.isBlank() ? EnginePlace.FRONT : FactValues.word(EnginePlace.class, "engine", v));
        setters.put(
                "substrate",
                (d, v) ->
                        d.substrate = v.isBlank() ? Substrate.STEEL : FactValues.word(Substrate.class, "substrate", v));
        setters.put(
                "drive",
                (d, v) -> d.drive = v.isBlank() ? DriveSide.LEFT : FactValues.word(DriveSide.class, "drive", v));
    }

    private void addSizeKeys() {
        setters.put("wheelbase-mm", (d, v) -> d.wheelbaseMm = FactValues.mm("wheelbase-mm", v, 1000, 6000));
        setters.put("length-mm", (d, v) -> d.lengthMm = FactValues.mm("length-mm", v, 1500, 9000));
        setters.put("width-mm", (d, v) -> d.widthMm = FactValues.mm("width-mm", v, 900, 3000));
        setters.put("height-mm", (d, v) -> d.heightMm = FactValues.mm("height-mm", v, 700, 3500));
    }

    private void addVisitKeys() {
        setters.put("timezone", (d, v) -> d.timezone = FactValues.timezone("timezone", v));
        addText("inspector", (d, v) -> d.inspector = v);
        addText("client", (d, v) -> d.client = v);
        setters.put("date", (d, v) -> d.date = FactValues.day("date", v));
        addText("place", (d, v) -> d.place = v);
        addText("odometer", (d, v) -> d.odometer = v);
        addText("light", (d, v) -> d.light = v);
        addText("lifted", (d, v) -> d.lifted = v);
        addText("taken-apart", (d, v) -> d.takenApart = v);
        addText("claimed", (d, v) -> d.claimed = v);
        setters.put(
                "gauge-range",
                (d, v) -> d.gaugeRange =
                        v.isBlank() ? VisitFacts.USUAL_GAUGE_RANGE : FactValues.thickness("gauge-range", v));
        setters.put(
                "gauge-correction",
                (d, v) -> d.gaugeCorrection =
                        v.isBlank() ? VisitChoices.USUAL.gaugeCorrection() : FactValues.yesOrNo("gauge-correction", v));
        addText("terms", (d, v) -> d.terms = v);
        addText("limits", (d, v) -> d.limits = v);
        addText(DiagramEdits.KEY, (d, v) -> d.diagram = v.filter(name -> !name.equals(DiagramEdits.SHIPPED)));
        setters.put(
                "report",
                (d, v) -> d.report =
                        v.isBlank() ? VisitChoices.USUAL.length() : FactValues.word(ReportLength.class, "report", v));
    }

    private void addText(String key, BiConsumer<FactDraft, Optional<String>> set) {
        setters.put(key, (d, v) -> set.accept(d, FactValues.text(v)));
    }

    private static Optional<String> required(String key, String value) throws EditRefused {
        if (value.isBlank()) {
            throw new EditRefused(key, key + " cannot be empty. Give a name.");
        }
        return FactValues.text(value);
    }

    /** The keys there are, for messages and help; {@code substrate.ZONE} stands for one key per zone. */
    public List<String> keys() {
        List<String> keys = new ArrayList<>(setters.keySet());
        keys.add(SUBSTRATE_OF + "ZONE");
        return List.copyOf(keys);
    }

    /**
     * The facts of a new visit. What is not given is the usual: finish unknown, steel, driver on the left.
     *
     * @param values by key; {@code car} and {@code style} must be there
     * @param computerZone the time zone unless one is given
     */
    public VisitFacts start(Map<String, String> values, ZoneId computerZone) throws EditRefused {
        return applied(new FactDraft(computerZone), values);
    }

    /** The facts with some of them set anew. */
    public VisitFacts apply(VisitFacts facts, Map<String, String> values) throws EditRefused {
        return applied(FactDraft.of(facts), values);
    }

    private VisitFacts applied(FactDraft draft, Map<String, String> values) throws EditRefused {
        for (Map.Entry<String, String> each : values.entrySet()) {
            if (!each.getKey().startsWith(SUBSTRATE_OF)) {
                setter(each.getKey()).set(draft, each.getValue());
            }
        }
        for (Map.Entry<String, String> each : values.entrySet()) {
            if (each.getKey().startsWith(SUBSTRATE_OF)) {
                setZoneSubstrate(draft, each.getKey(), each.getValue());
            }
        }
        return draft.facts();
    }

    private Setter setter(String key) throws EditRefused {
        Setter setter = setters.get(key);
        if (setter == null) {
            throw new EditRefused(
                    key, "There is no fact called \"" + key + "\". The facts are " + String.join(", ", keys()) + ".");
        }
        return setter;
    }

    private void setZoneSubstrate(FactDraft draft, String key, String value) throws EditRefused {
        String name = key.substring(SUBSTRATE_OF.length());
        Body body = draft.body();
        Optional<quarterlight.car.ZoneId> zone = catalog.zonesOf(body).stream()
                .map(z -> z.id())
                .filter(id -> id.value().equals(name))
                .findFirst();
        if (zone.isEmpty()) {
            throw new EditRefused(
                    key,
                    key + " cannot be set: a car of this body has no zone \"" + name + "\". Give a zone by its id.");
        }
        if (value.isBlank()) {
            draft.substrates.remove(zone.get());
        } else {
            draft.substrates.put(zone.get(), FactValues.word(Substrate.class, key, value));
        }
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
        VisitFacts facts = apply(store.read().facts(), values);
        store.change("set " + String.join(", ", values.keySet()), tx -> tx.setFacts(facts));
        return StrayZones.of(store.read(), catalog);
    }
}
