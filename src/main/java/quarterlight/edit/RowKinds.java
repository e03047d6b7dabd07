package quarterlight.edit;

import java.util.List;
import java.util.Optional;
import quarterlight.rust.plane.NoteCheck;
import quarterlight.rust.plane.TraceCheck;
import quarterlight.store.RecordKind;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.rows.CoverageRows;
import quarterlight.table.rows.FeatureRows;
import quarterlight.table.rows.GaugeRows;
import quarterlight.table.rows.HiddenRows;
import quarterlight.table.rows.LeftOutRows;
import quarterlight.table.rows.MarkRows;
import quarterlight.table.rows.NoteRows;
import quarterlight.table.rows.PhotoRule;
import quarterlight.table.rows.PinRows;
import quarterlight.table.rows.ReadingRows;
import quarterlight.table.rows.SignRows;
import quarterlight.table.rows.StatementRows;
import quarterlight.table.rows.TraceRows;
import quarterlight.table.rows.TraceRule;
import quarterlight.table.rows.TrialRows;
import quarterlight.visit.HiddenRegion;
import quarterlight.visit.PhotoNote;

/**
 * A kind of row as a file has it and as the visit keeps it.
 *
 * @param csv its form in a CSV file
 * @param kept its form in the visit
 */
public record RowKinds<T>(RowKind<T> csv, RecordKind<T> kept) {
    /** What the geometry of a trace must keep to, at the cell it is about. */
    public static final TraceRule MEASURABLE =
            (trace, photo) -> TraceCheck.problem(trace, photo).map(why -> new CellRefused(columnOf(why), why));

    /** What a note must keep to, at the cell it is about. */
    static final PhotoRule<PhotoNote> DRAWABLE = (note, photo) -> NoteCheck.ofPoints(note, photo)
            .map(why -> new CellRefused("points", why))
            .or(() -> NoteCheck.ofScale(note, photo).map(why -> new CellRefused("scale", why)));

    /** What a hidden region must keep to. */
    static final PhotoRule<HiddenRegion> OUTLINED =
            (region, photo) -> NoteCheck.ofOutline(region, photo).map(why -> new CellRefused("outline", why));

    private static String columnOf(String why) {
        return why.contains("outline") ? "outline" : "scale";
    }

    public static List<RowKinds<?>> all() {
        return List.of(
                new RowKinds<>(new ReadingRows(), RecordKind.READINGS),
                new RowKinds<>(new GaugeRows(), RecordKind.GAUGE),
                new RowKinds<>(new PinRows(), RecordKind.PINS),
                new RowKinds<>(new SignRows(), RecordKind.SIGNS),
                new RowKinds<>(new TraceRows(MEASURABLE), RecordKind.TRACES),
                new RowKinds<>(new MarkRows(), RecordKind.MARKS),
                new RowKinds<>(new TrialRows(), RecordKind.TRIALS),
                new RowKinds<>(new StatementRows(), RecordKind.STATEMENTS),
                new RowKinds<>(new FeatureRows(), RecordKind.FEATURES),
                new RowKinds<>(new NoteRows(DRAWABLE), RecordKind.PHOTO_NOTES),
                new RowKinds<>(new HiddenRows(OUTLINED), RecordKind.HIDDEN),
                new RowKinds<>(new CoverageRows(), RecordKind.COVERAGE),
                new RowKinds<>(new LeftOutRows(), RecordKind.LEFT_OUT));
    }

    public static Optional<RowKinds<?>> find(String word) {
        for (RowKinds<?> kind : all()) {
            if (kind.csv().word().equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    public static List<String> words() {
        return all().stream().map(kind -> kind.csv().word()).toList();
    }
}
