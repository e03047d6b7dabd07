package quarterlight.visit.fact;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.car.PartialDate;
import quarterlight.car.WrittenDate;
import quarterlight.language.Sentences;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;
import quarterlight.visit.row.CellRefused;

/**
 * How people write a fact. What is not so is refused in a sentence; ranges are wide: they catch a wrong unit or a slip of the hand, not an
 * unusual car.
 *
 * @param parse reads a text that is not blank
 * @param blank whether a blank text stands for nothing known, or for the usual; else it is read like any other
 * @param print writes a value so that it reads back as the same one
 * @param words the words of a closed list; none for anything else
 * @param unit the unit that tables add, with a blank before it, where the key does not name one
 * @param none a word that stands for nothing known, as a blank does
 */
public record FactForm<V>(
        Parse<V> parse, boolean blank, Function<V, String> print, List<String> words, String unit, String none) {
    private static final Pattern MM = Pattern.compile("(\\d{1,6})(?: ?mm)?");
    private static final Pattern THICKNESS = Pattern.compile("(\\d{1,6}(?:[.,]\\d{1,6})?)(?: ?(um|\u00b5m|mil))?");
    private static final int FIRST_YEAR = 1880;
    private static final int LAST_YEAR = 2100;
    private static final int FIRST_VISIT_YEAR = 1970;
    private static final double MAX_GAUGE_RANGE_UM = 50_000;

    /** Reads a text; empty if it is not what is expected. */
    @FunctionalInterface
    interface Parse<V> {
        V read(String key, String text) throws CellRefused;
    }

    /** The value of a text; empty if it stands for nothing known. */
    public Optional<V> read(String key, String text) throws CellRefused {
        return blank && (text.isBlank() || text.strip().equals(none))
                ? Optional.empty()
                : Optional.of(parse.read(key, text));
    }

    private static <V> FactForm<V> of(Parse<V> parse, Function<V, String> print) {
        return new FactForm<>(parse, true, print, List.of(), "", "");
    }

    /** The same form, but it cannot be left blank. */
    FactForm<V> needed() {
        return new FactForm<>(parse, false, print, words, unit, none);
    }

    /** The value, if it was found; else a sentence with what to give instead. */
    private static <V> V found(String key, String text, Optional<V> value, String wanted) throws CellRefused {
        return value.orElseThrow(() -> new CellRefused(key, say("refused.fact", named(key), text, wanted)));
    }

    /** What a fact is called to people; the key that they type in English, for the command line. */
    private static String named(String key) {
        return Sentences.sayOr("undo.fact." + key, key);
    }

    static FactForm<String> text() {
        return of((key, text) -> text.strip(), Function.identity());
    }

    /** A text, or a word that stands for none. */
    static FactForm<String> textBut(String none) {
        return new FactForm<>((key, text) -> text.strip(), true, Function.identity(), List.of(), "", none);
    }

    static FactForm<String> name() {
        return new FactForm<>(
                (key, text) -> {
                    if (text.isBlank()) {
                        throw new CellRefused(key, say("refused.fact.empty", named(key)));
                    }
                    return text.strip();
                },
                false,
                Function.identity(),
                List.of(),
                "",
                "");
    }

    static <E extends Enum<E> & Worded> FactForm<E> word(Class<E> type) {
        return new FactForm<>(
                (key, text) ->
                        found(key, text, Worded.find(type, text), say("refused.fact.one-of", Worded.words(type))),
                true,
                value -> value.word(),
                Worded.list(type),
                "",
                "");
    }

    static FactForm<Boolean> yesOrNo() {
        return of(
                (key, text) -> {
                    String word = text.strip().toLowerCase(Locale.ROOT);
                    return found(
                            key,
                            text,
                            Optional.of(word.equals("yes")).filter(yes -> yes || word.equals("no")),
                            say("refused.fact.yes-no"));
                },
                yes -> yes ? "yes" : "no");
    }

    static FactForm<Integer> year() {
        return of(
                (key, text) -> found(
                        key,
                        text,
                        Optional.of(text.strip())
                                .filter(digits -> digits.matches("\\d{4}"))
                                .map(Integer::valueOf)
                                .filter(year -> year >= FIRST_YEAR && year <= LAST_YEAR),
                        say("refused.fact.year", FIRST_YEAR, LAST_YEAR)),
                year -> Integer.toString(year));
    }

    static FactForm<PartialDate> date() {
        return of(
                (key, text) -> found(
                        key,
                        text,
                        WrittenDate.parse(text)
                                .filter(d -> d.first().getYear() >= FIRST_YEAR
                                        && d.last().getYear() <= LAST_YEAR),
                        say("refused.fact.date", FIRST_YEAR, LAST_YEAR)),
                PartialDate::text);
    }

    static FactForm<LocalDate> day() {
        return of(
                (key, text) -> found(
                        key,
                        text,
                        WrittenDate.parse(text)
                                .filter(d -> d.first().equals(d.last()))
                                .map(PartialDate::first)
                                .filter(d -> d.getYear() >= FIRST_VISIT_YEAR && d.getYear() <= LAST_YEAR),
                        say("refused.fact.day", FIRST_VISIT_YEAR, LAST_YEAR)),
                LocalDate::toString);
    }

    static FactForm<ZoneId> timezone() {
        return of((key, text) -> found(key, text, zone(text), say("refused.fact.zone")), ZoneId::getId)
                .needed();
    }

    private static Optional<ZoneId> zone(String text) {
        try {
            return Optional.of(ZoneId.of(text.strip()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** A length of the car in whole mm within a range that a car can have. */
    static FactForm<Integer> mm(int min, int max) {
        return of(
                (key, text) -> found(
                        key,
                        text,
                        Optional.of(MM.matcher(text.strip().toLowerCase(Locale.ROOT)))
                                .filter(Matcher::matches)
                                .map(m -> Integer.valueOf(m.group(1)))
                                .filter(mm -> mm >= min && mm <= max),
                        say("refused.fact.mm", min, max)),
                mm -> Integer.toString(mm));
    }

    /** A thickness in um, or in mil if the unit says so. */
    static FactForm<Thickness> thickness() {
        return new FactForm<>(
                (key, text) -> found(
                        key,
                        text,
                        Optional.of(THICKNESS.matcher(text.strip().toLowerCase(Locale.ROOT)))
                                .filter(Matcher::matches)
                                .map(FactForm::um)
                                .filter(um -> um > 0 && um <= MAX_GAUGE_RANGE_UM)
                                .map(Thickness::new),
                        say("refused.fact.thickness", (int) MAX_GAUGE_RANGE_UM)),
                true,
                thickness -> plain(thickness.um()),
                List.of(),
                " um",
                "");
    }

    private static double um(Matcher m) {
        double typed = new BigDecimal(m.group(1).replace(',', '.')).doubleValue();
        return "mil".equals(m.group(2)) ? ThicknessUnit.MIL.toUm(typed) : typed;
    }

    private static String plain(double value) {
        return value == Math.rint(value)
                ? Long.toString((long) value)
                : new BigDecimal(Double.toString(value)).toPlainString();
    }
}
