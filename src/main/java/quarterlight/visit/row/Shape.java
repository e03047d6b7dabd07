package quarterlight.visit.row;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.trial.TrialResult;

/**
 * How a value of one type stands in cells: how it is read, how it is written, and which columns it takes up.
 *
 * @param columns the columns it takes up in a table; most shapes take up the one they are given
 * @param stored the columns it takes up in the database
 */
public record Shape<V>(
        Read<V> read, Write<V> write, Function<Column, List<Column>> columns, Function<String, List<String>> stored) {
    /** Reads a value from the cells of a row; empty if the cell is blank. */
    @FunctionalInterface
    public interface Read<V> {
        Optional<V> from(CellSource in, String name) throws CellRefused;
    }

    /** Writes a value into the cells of a row. */
    @FunctionalInterface
    public interface Write<V> {
        void to(CellSink out, String name, V value);
    }

    public static final Shape<String> TEXT = one(CellSource::text, CellSink::text);
    public static final Shape<Boolean> FLAG = one(CellSource::flag, CellSink::flag);
    public static final Shape<BigDecimal> DECIMAL = one(CellSource::decimal, CellSink::decimal);
    public static final Shape<Double> AMOUNT = one(CellSource::amount, CellSink::amount);
    public static final Shape<LocalDateTime> TIME = one(CellSource::time, CellSink::time);
    public static final Shape<PartialDate> DATE = one(CellSource::date, CellSink::date);
    public static final Shape<ZoneId> ZONE = one(CellSource::zone, CellSink::zone);
    public static final Shape<ZoneId> ZONE_OF_PHOTO = one(CellSource::zoneOfPhoto, CellSink::zone);
    public static final Shape<PhotoId> PHOTO = one(CellSource::photo, CellSink::photo);
    public static final Shape<PhotoId> STILL = one(CellSource::still, CellSink::photo);
    public static final Shape<Double> FILM_MOMENT = one(CellSource::filmMoment, CellSink::amount);
    public static final Shape<Outline> OUTLINE = one(CellSource::outline, CellSink::outline);
    public static final Shape<PhotoScale> SCALE = one(CellSource::scale, CellSink::scale);
    public static final Shape<List<PixelPoint>> POINTS = one(CellSource::points, CellSink::points);
    public static final Shape<String> DATE_PATTERN = one(CellSource::datePattern, CellSink::text);

    /** The first photo has a cell of its own in the database, the others share one. */
    public static final Shape<List<PhotoId>> PHOTOS = new Shape<>(
            (in, name) -> Optional.of(in.photos(name)),
            CellSink::photos,
            List::of,
            name -> List.of(name, moreOf(name)));

    public static final Shape<ViewPoint> POINT = new Shape<>(
            CellSource::point,
            CellSink::point,
            view -> List.of(view, Column.optional("x"), Column.optional("y")),
            view -> List.of(view, "x", "y"));

    /** As typed with its unit; in the database also in um, for queries by hand. */
    public static final Shape<GaugeValue> GAUGE_VALUE = new Shape<>(
            CellSource::gaugeValue,
            CellSink::gaugeValue,
            value -> List.of(value, Column.required("unit")),
            name -> List.of("outcome", "typed", "typed_high", "unit", "thickness_um"));

    public static final Shape<ShownThickness> SHOWN_THICKNESS = new Shape<>(
            CellSource::shownThickness,
            CellSink::shownThickness,
            nominal -> List.of(
                    nominal, Column.required("shown"), Column.required("unit"), Column.optional("nominal_tolerance")),
            name -> List.of(
                    "nominal_typed",
                    "nominal_unit",
                    "nominal_um",
                    "shown_typed",
                    "shown_unit",
                    "shown_um",
                    "nominal_tolerance_um"));

    /** Origin, condition or both; tables of earlier versions have one column for the two. */
    public static final Shape<Facets> FACETS = new Shape<>(
            Shape::facets,
            (out, name, value) -> {
                value.origin().ifPresent(origin -> out.word("origin", origin));
                value.condition().ifPresent(condition -> out.word("condition", condition));
            },
            origin -> List.of(origin, Column.optional("condition"), Column.older("kind")),
            name -> List.of("origin", "condition"));

    private static Optional<Facets> facets(CellSource in, String name) throws CellRefused {
        Optional<Origin> origin = in.word("origin", Origin.class);
        Optional<Condition> condition = in.word("condition", Condition.class);
        Optional<String> kind = in.older("kind");
        if (kind.isPresent() && (origin.isPresent() || condition.isPresent())) {
            throw new CellRefused("kind", say("cell.statement.kind"));
        }
        if (kind.isPresent()) {
            return Optional.of(Facets.ofEarlierKind(kind.get())
                    .orElseThrow(() -> new CellRefused(
                            "kind",
                            say(
                                    "cell.statement.kind.none-of",
                                    kind.get(),
                                    Worded.words(Origin.class),
                                    Worded.words(Condition.class)))));
        }
        return origin.isEmpty() && condition.isEmpty() ? Optional.empty() : Optional.of(new Facets(origin, condition));
    }

    /** What came of a trial, with its value: a number in place of the result is a measured value. */
    public static final Shape<Tried> TRIED = new Shape<>(
            Shape::tried,
            (out, name, value) -> {
                out.word(name, value.result());
                value.value().ifPresent(number -> out.decimal("value", number));
            },
            result -> List.of(result, Column.optional("value")),
            name -> List.of(name, "value"));

    /** A result and the value that was measured, if one was. */
    public record Tried(TrialResult result, Optional<BigDecimal> value) {}

    private static Optional<Tried> tried(CellSource in, String name) throws CellRefused {
        Optional<String> said = in.text(name);
        Optional<BigDecimal> value = in.decimal("value");
        if (said.isPresent() && value.isEmpty() && NUMBER.matcher(said.get()).matches()) {
            return Optional.of(new Tried(TrialResult.MEASURED, in.decimal(name)));
        }
        Optional<TrialResult> result = in.word(name, TrialResult.class);
        return result.map(word -> new Tried(word, value));
    }

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d[\\d.,]*");

    /** One of a closed list of words. */
    public static <E extends Enum<E> & Worded> Shape<E> word(Class<E> type) {
        return one((in, name) -> in.word(name, type), (out, name, value) -> out.word(name, value));
    }

    /** A whole number from 0 to {@code max}. */
    public static Shape<Integer> count(int max) {
        return one((in, name) -> in.count(name, max), CellSink::count);
    }

    /** A value that stands as another one; {@code in} may throw an {@link IllegalArgumentException}. */
    public <W> Shape<W> as(Function<V, W> in, Function<W, V> out) {
        return new Shape<>(
                (source, name) -> read.from(source, name).map(in),
                (sink, name, value) -> write.to(sink, name, out.apply(value)),
                columns,
                stored);
    }

    /** The column of the database for the photos after the first. */
    public static String moreOf(String photo) {
        return "more_" + photo + "s";
    }

    private static <V> Shape<V> one(Read<V> read, Write<V> write) {
        return new Shape<>(read, write, List::of, List::of);
    }
}
