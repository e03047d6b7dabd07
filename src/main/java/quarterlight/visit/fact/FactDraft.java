package quarterlight.visit.fact;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import quarterlight.car.Car;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.Dimensions;
import quarterlight.visit.BriefWords;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.CellSource;

/** The facts of a visit while they are set one after the other. One thread, one use. */
public final class FactDraft {
    private final Map<String, Optional<?>> values = new HashMap<>();
    private final Map<ZoneId, Substrate> substrates = new TreeMap<>();

    /** A draft in which nothing is set. */
    public FactDraft() {}

    /** A draft of the facts as they are. A construction that is the usual one follows the style. */
    public static FactDraft of(VisitFacts facts) {
        FactDraft draft = new FactDraft();
        Facts.all().forEach(fact -> fact.copy(facts, draft));
        Body body = facts.car().body();
        if (body.construction() == Construction.usualFor(body.style())) {
            draft.put(Facts.CONSTRUCTION, Optional.empty());
        }
        draft.substrates.putAll(facts.car().substrates());
        return draft;
    }

    /** A draft of the facts that stand in cells. */
    public static FactDraft of(CellSource in) throws CellRefused {
        FactDraft draft = new FactDraft();
        for (Fact<?> fact : Facts.all()) {
            fact.read(in, draft);
        }
        return draft;
    }

    /** Sets a fact by its text; a blank one clears it, or brings back the usual. */
    public void set(Fact<?> fact, String text) throws CellRefused {
        fact.set(this, text);
    }

    public <V> void put(Fact<V> fact, Optional<V> value) {
        values.put(fact.key(), value);
    }

    /** What a zone is made of; empty for what the car is made of. */
    public void putSubstrate(ZoneId zone, Optional<Substrate> substrate) {
        substrate.ifPresentOrElse(made -> substrates.put(zone, made), () -> substrates.remove(zone));
    }

    /** The value of a fact, else the usual one. Only {@link #put} fills the map, so each key holds values of its fact's type. */
    @SuppressWarnings("unchecked")
    <V> Optional<V> get(Fact<V> fact) {
        Optional<V> value = (Optional<V>) values.getOrDefault(fact.key(), Optional.empty());
        return value.or(fact::usual);
    }

    <V> V need(Fact<V> fact) throws CellRefused {
        return get(fact).orElseThrow(() -> {
            String wanted = fact.form().words().isEmpty()
                    ? fact.option().map(Fact.Option::help).orElse("a value")
                    : "one of " + String.join(", ", fact.form().words());
            return new CellRefused(fact.key(), "A visit needs " + fact.key() + ". Give " + wanted + ".");
        });
    }

    private OptionalInt number(Fact<Integer> fact) {
        return get(fact).map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }

    /** The body as far as it is set; {@code style} must be. */
    public Body body() throws CellRefused {
        BodyStyle style = need(Facts.STYLE);
        return new Body(style, get(Facts.CONSTRUCTION).orElse(Construction.usualFor(style)), need(Facts.ENGINE));
    }

    /** @throws CellRefused if a fact is missing that every visit has */
    public VisitFacts facts() throws CellRefused {
        return new VisitFacts(
                car(),
                need(Facts.TIMEZONE),
                get(Facts.INSPECTOR),
                get(Facts.CLIENT),
                get(Facts.DATE),
                get(Facts.PLACE),
                get(Facts.ODOMETER),
                get(Facts.LIGHT),
                get(Facts.LIFTED),
                get(Facts.TAKEN_APART),
                get(Facts.CLAIMED),
                need(Facts.GAUGE_RANGE),
                new VisitChoices(
                        need(Facts.GAUGE_CORRECTION),
                        get(Facts.DIAGRAM),
                        get(Facts.TERMS),
                        get(Facts.LIMITS),
                        need(Facts.REPORT),
                        new BriefWords(get(Facts.CREDENTIALS), get(Facts.CONTACT), get(Facts.BRIEF))));
    }

    private Car car() throws CellRefused {
        return new Car(
                need(Facts.CAR),
                body(),
                need(Facts.DRIVE),
                need(Facts.FINISH),
                number(Facts.YEAR),
                get(Facts.BUILT),
                need(Facts.SUBSTRATE),
                substrates,
                new Dimensions(
                        number(Facts.WHEELBASE), number(Facts.LENGTH), number(Facts.WIDTH), number(Facts.HEIGHT)));
    }
}
