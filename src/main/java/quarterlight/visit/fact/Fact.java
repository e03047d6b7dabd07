package quarterlight.visit.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import quarterlight.units.Worded;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.CellSink;
import quarterlight.visit.row.CellSource;
import quarterlight.visit.row.Field;
import quarterlight.visit.row.FieldReader;
import quarterlight.visit.row.Shape;

/**
 * One fact of a visit: its key, how it is set and told in words, and how it is kept. Adding a fact is adding one of these to {@link Facts}.
 *
 * @param field its key, its column in the database, and its value in the facts of a visit
 * @param form how it is written by people
 * @param usual the value unless another one is set
 * @param section where a form asks for it; empty if the form does not
 * @param option how the command for a new visit asks for it; empty if it does not
 * @param atHome whether it is left out of everything made for the buyer
 */
public record Fact<V>(
        Field<VisitFacts, V> field,
        FactForm<V> form,
        Optional<V> usual,
        Optional<Section> section,
        Optional<Option> option,
        boolean atHome) {
    /** A section of the form. */
    public enum Section {
        CAR,
        SIZE,
        VISIT
    }

    /** An option of the command for a new visit: what stands for its value, what it means, and whether it must be given. */
    public record Option(String label, String help, boolean required) {}

    public Fact {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(usual, "usual");
        Objects.requireNonNull(section, "section");
        Objects.requireNonNull(option, "option");
    }

    /** A fact that may be unknown. */
    static <V> Fact<V> of(
            String key, String stored, Shape<V> shape, FactForm<V> form, Function<VisitFacts, Optional<V>> of) {
        return new Fact<>(
                Field.optional(key, shape, of).storedAs(stored),
                form,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /** A fact that always has a value. */
    static <V> Fact<V> always(String key, String stored, Shape<V> shape, FactForm<V> form, Function<VisitFacts, V> of) {
        return of(key, stored, shape, form, of.andThen(Optional::of));
    }

    Fact<V> usually(V value) {
        return new Fact<>(field, form, Optional.of(value), section, option, atHome);
    }

    Fact<V> in(Section place) {
        return new Fact<>(field, form, usual, Optional.of(place), option, atHome);
    }

    /** The command for a new visit takes it. */
    Fact<V> asked(String label, String help) {
        return asked(new Option(label, help, false));
    }

    /** The command for a new visit needs it. */
    Fact<V> demanded(String label, String help) {
        return asked(new Option(label, help, true));
    }

    private Fact<V> asked(Option other) {
        return new Fact<>(field, form, usual, section, Optional.of(other), atHome);
    }

    Fact<V> keptAtHome() {
        return new Fact<>(field, form, usual, section, option, true);
    }

    public String key() {
        return field.column().name();
    }

    /** The words to choose from: the usual one first, or an empty one if there is none and it may be unknown; none for free text. */
    public List<String> choices() {
        List<String> words = new ArrayList<>(form.words());
        usual.map(form.print()).ifPresent(word -> {
            words.remove(word);
            words.add(0, word);
        });
        if (!words.isEmpty() && usual.isEmpty() && form.blank()) {
            words.add(0, "");
        }
        return List.copyOf(words);
    }

    /** A word to choose from as it is said in the language in hand. */
    public String said(String word) {
        try {
            return form.read(key(), word)
                    .map(value -> value instanceof Worded worded ? worded.said() : word)
                    .orElse(word);
        } catch (CellRefused e) {
            return word;
        }
    }

    /** The fact as setting it takes it; empty if it is not known. */
    public String text(VisitFacts facts) {
        return field.of().apply(facts).map(form.print()).orElse("");
    }

    /** The fact as tables tell it, with its unit. */
    public String cell(VisitFacts facts) {
        return text(facts) + (text(facts).isEmpty() ? "" : form.unit());
    }

    void set(FactDraft draft, String value) throws CellRefused {
        draft.put(this, form.read(key(), value));
    }

    void copy(VisitFacts facts, FactDraft draft) {
        draft.put(this, field.of().apply(facts));
    }

    void read(CellSource in, FactDraft draft) throws CellRefused {
        draft.put(this, new FieldReader(in).get(field));
    }

    void write(VisitFacts facts, CellSink out) {
        field.write(facts, out);
    }
}
