package quarterlight.visit.row;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import quarterlight.units.Numerals;
import quarterlight.visit.BuyerRelease;
import quarterlight.visit.CoverageOverride;
import quarterlight.visit.DroppedDraft;
import quarterlight.visit.MatterDecision;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.OdometerFigure;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.Trial;

/**
 * The kinds of rows that are added, changed and removed alike: what a kind is called, which fields its rows have, and how a row is made
 * of them. Tables, the database, the JSON of archives and the labels of undo read this catalog and know of no kind by themselves.
 * Immutable.
 */
public final class RecordKind<T> {
    public static final RecordKind<Reading> READINGS = GaugeKinds.readings();
    public static final RecordKind<GaugeCheck> GAUGE = GaugeKinds.checks();
    public static final RecordKind<Pin> PINS = PhotoKinds.pins();
    public static final RecordKind<Sign> SIGNS = CarKinds.signs();
    public static final RecordKind<Trace> TRACES = PhotoKinds.traces();
    public static final RecordKind<Mark> MARKS = CarKinds.marks();
    public static final RecordKind<Trial> TRIALS = CarKinds.trials();
    public static final RecordKind<Statement> STATEMENTS = SayKinds.statements();
    public static final RecordKind<Feature> FEATURES = CarKinds.features();
    public static final RecordKind<PhotoNote> PHOTO_NOTES = PhotoKinds.notes();
    public static final RecordKind<HiddenRegion> HIDDEN = PhotoKinds.hidden();
    public static final RecordKind<CoverageOverride> COVERAGE = ChoiceKinds.coverage();
    public static final RecordKind<ReportExclusion> LEFT_OUT = ChoiceKinds.leftOut();

    public static final RecordKind<Claim> CLAIMS = SayKinds.claims();
    public static final RecordKind<OdometerFigure> ODOMETER = SayKinds.odometer();
    public static final RecordKind<BuyerRelease> RELEASED = ChoiceKinds.released();
    public static final RecordKind<MatterDecision> DECISIONS = ChoiceKinds.decisions();
    public static final RecordKind<DroppedDraft> DROPPED = ChoiceKinds.dropped();

    private final String word;
    private final String table;
    private final Function<VisitRecord, List<Recorded<T>>> rows;
    private final List<Field<T, ?>> fields;
    private final Make<T> make;
    private final UndoNames<T> names;
    private final Check<T> check;

    /** Makes a row of its fields. */
    @FunctionalInterface
    public interface Make<T> {
        T of(FieldReader in) throws CellRefused;
    }

    /** What a row must keep to when it is entered; older rows may not. */
    @FunctionalInterface
    public interface Check<T> {
        void require(T row) throws CellRefused;
    }

    private RecordKind(
            String word,
            String table,
            Function<VisitRecord, List<Recorded<T>>> rows,
            List<Field<T, ?>> fields,
            Make<T> make,
            UndoNames<T> names,
            Check<T> check) {
        this.word = word;
        this.table = table;
        this.rows = rows;
        this.fields = List.copyOf(fields);
        this.make = make;
        this.names = names;
        this.check = check;
    }

    /**
     * A kind.
     *
     * @param word what commands call it; the plural
     * @param table its table in the database
     */
    static <T> RecordKind<T> of(
            String word,
            String table,
            Function<VisitRecord, List<Recorded<T>>> rows,
            List<Field<T, ?>> fields,
            Make<T> make) {
        return new RecordKind<>(word, table, rows, fields, make, UndoNames.plain(word), row -> {});
    }

    /** The same kind with a name for each row in the labels of undo. */
    RecordKind<T> named(BiFunction<T, UndoNames.Words, String> name) {
        return named(UndoNames.of(name));
    }

    RecordKind<T> named(UndoNames<T> other) {
        return new RecordKind<>(word, table, rows, fields, make, other, check);
    }

    /** The same kind with a rule for rows that are entered. */
    RecordKind<T> checked(Check<T> rule) {
        return new RecordKind<>(word, table, rows, fields, make, names, rule);
    }

    /** Every kind, in the order of the documentation. */
    public static List<RecordKind<?>> all() {
        return List.of(
                READINGS,
                GAUGE,
                PINS,
                SIGNS,
                TRACES,
                MARKS,
                TRIALS,
                STATEMENTS,
                FEATURES,
                PHOTO_NOTES,
                HIDDEN,
                COVERAGE,
                LEFT_OUT,
                CLAIMS,
                ODOMETER,
                RELEASED,
                DECISIONS,
                DROPPED);
    }

    /** The kind that a command calls by this word. */
    public static Optional<RecordKind<?>> find(String word) {
        for (RecordKind<?> kind : all()) {
            if (kind.word.equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /** What commands call it: {@code readings}, {@code gauge} … */
    public String word() {
        return word;
    }

    /** What one is called: {@code gauge check}. */
    public String one() {
        return say("kind.one." + word);
    }

    /** A count in words: {@code 1 gauge check}, {@code 42 readings}. */
    public String count(int n) {
        return Numerals.count(n, one(), say("kind.many." + word));
    }

    /** Its table in the database. */
    public String table() {
        return table;
    }

    public List<Recorded<T>> of(VisitRecord visit) {
        return rows.apply(visit);
    }

    /** The columns of a table of this kind, in the order in which they are written. */
    public List<Column> columns() {
        return fields.stream().flatMap(field -> field.columns().stream()).toList();
    }

    /** The columns of the database beside the row's number. */
    public List<String> storedColumns() {
        return fields.stream().flatMap(field -> field.storedColumns().stream()).toList();
    }

    /** Makes a row of cells. */
    public T read(CellSource in) throws CellRefused {
        return make.of(new FieldReader(in));
    }

    /** Makes a row of cells that somebody enters. */
    public T enter(CellSource in) throws CellRefused {
        T row = read(in);
        check.require(row);
        return row;
    }

    /** Writes every field that a row has. */
    public void write(T row, CellSink out) {
        Objects.requireNonNull(row, "row");
        fields.forEach(field -> field.write(row, out));
    }

    /** Every value that a row has. */
    public Stream<Object> values(T row) {
        Objects.requireNonNull(row, "row");
        return fields.stream().flatMap(field -> field.of().apply(row).stream());
    }

    /** How the labels of undo call an edit of one row. */
    public UndoNames<T> names() {
        return names;
    }

    @Override
    public String toString() {
        return word;
    }
}
