package quarterlight.store;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import quarterlight.store.rows.CarRows;
import quarterlight.store.rows.ChoiceRows;
import quarterlight.store.rows.GaugeRows;
import quarterlight.store.rows.NoteRows;
import quarterlight.store.rows.PhotoRows;
import quarterlight.store.rows.TableShape;
import quarterlight.visit.CoverageWish;
import quarterlight.visit.Feature;
import quarterlight.visit.GaugeCheck;
import quarterlight.visit.HiddenRegion;
import quarterlight.visit.LeftOut;
import quarterlight.visit.Mark;
import quarterlight.visit.PhotoNote;
import quarterlight.visit.Pin;
import quarterlight.visit.Reading;
import quarterlight.visit.Recorded;
import quarterlight.visit.Sign;
import quarterlight.visit.Statement;
import quarterlight.visit.Trace;
import quarterlight.visit.Trial;
import quarterlight.visit.VisitRecord;

/** The kinds of rows that are added, changed and removed alike. Immutable. */
public final class RecordKind<T> {
    public static final RecordKind<Reading> READINGS =
            new RecordKind<>("readings", "reading", "readings", GaugeRows.READINGS, VisitRecord::readings);
    public static final RecordKind<GaugeCheck> GAUGE =
            new RecordKind<>("gauge", "gauge check", "gauge checks", GaugeRows.CHECKS, VisitRecord::gaugeChecks);
    public static final RecordKind<Pin> PINS =
            new RecordKind<>("pins", "pin", "pins", PhotoRows.PINS, VisitRecord::pins);
    public static final RecordKind<Sign> SIGNS =
            new RecordKind<>("signs", "sign", "signs", CarRows.SIGNS, VisitRecord::signs);
    public static final RecordKind<Trace> TRACES =
            new RecordKind<>("traces", "trace", "traces", PhotoRows.TRACES, VisitRecord::traces);
    public static final RecordKind<Mark> MARKS =
            new RecordKind<>("marks", "mark", "marks", CarRows.MARKS, VisitRecord::marks);
    public static final RecordKind<Trial> TRIALS =
            new RecordKind<>("trials", "trial", "trials", CarRows.TRIALS, VisitRecord::trials);
    public static final RecordKind<Statement> STATEMENTS =
            new RecordKind<>("statements", "statement", "statements", CarRows.STATEMENTS, VisitRecord::statements);
    public static final RecordKind<Feature> FEATURES =
            new RecordKind<>("features", "feature", "features", CarRows.FEATURES, VisitRecord::features);

    public static final RecordKind<PhotoNote> PHOTO_NOTES =
            new RecordKind<>("notes", "note", "notes", NoteRows.NOTES, VisitRecord::photoNotes);
    public static final RecordKind<HiddenRegion> HIDDEN =
            new RecordKind<>("hidden", "hidden region", "hidden regions", NoteRows.HIDDEN, VisitRecord::hidden);
    public static final RecordKind<CoverageWish> COVERAGE = new RecordKind<>(
            "coverage", "coverage wish", "coverage wishes", ChoiceRows.COVERAGE, VisitRecord::coverage);
    public static final RecordKind<LeftOut> LEFT_OUT = new RecordKind<>(
            "left-out", "thing left out", "things left out", ChoiceRows.LEFT_OUT, VisitRecord::leftOut);

    private final String word;
    private final String one;
    private final String many;
    private final TableShape<T> shape;
    private final Function<VisitRecord, List<Recorded<T>>> rows;

    private RecordKind(
            String word, String one, String many, TableShape<T> shape, Function<VisitRecord, List<Recorded<T>>> rows) {
        this.word = word;
        this.one = one;
        this.many = many;
        this.shape = shape;
        this.rows = rows;
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
                LEFT_OUT);
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
        return one;
    }

    /** A count in words: {@code 1 gauge check}, {@code 42 readings}. */
    public String count(int n) {
        return n + " " + (n == 1 ? one : many);
    }

    public List<Recorded<T>> of(VisitRecord visit) {
        return rows.apply(visit);
    }

    TableShape<T> shape() {
        return shape;
    }

    @Override
    public String toString() {
        return word;
    }
}
