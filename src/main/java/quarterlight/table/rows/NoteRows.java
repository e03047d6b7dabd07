package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.PointsText;
import quarterlight.table.cell.RowContext;
import quarterlight.table.cell.ScaleText;
import quarterlight.visit.NoteShape;
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoNote;
import quarterlight.visit.PhotoScale;
import quarterlight.visit.PixelPoint;

/** Notes on photos: an arrow, a box, a text or a measuring line. */
public final class NoteRows implements RowKind<PhotoNote> {
    private static final String HOW = "; write x y, x y (of a text one pair) in pixels of the upright photo";

    private final PhotoRule<PhotoNote> rule;

    public NoteRows(PhotoRule<PhotoNote> rule) {
        this.rule = Objects.requireNonNull(rule, "rule");
    }

    @Override
    public String word() {
        return "notes";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("photo"),
                required("shape"),
                required("points"),
                optional("text"),
                optional("scale"),
                optional(FilmMoment.COLUMN));
    }

    @Override
    public PhotoNote value(Cells cells) throws CellRefused {
        Photo photo = need("photo", cells.photo("photo"));
        NoteShape shape = need("shape", cells.word("shape", NoteShape.class));
        PhotoNote note = new PhotoNote(
                photo.id(),
                FilmMoment.read(cells, Optional.of(photo)),
                shape,
                points(need("points", cells.raw("points")), shape),
                shape == NoteShape.TEXT ? Optional.of(cells.required("text")) : cells.text("text"),
                scale(cells, shape));
        return rule.checked(note, photo.file());
    }

    private static List<PixelPoint> points(String text, NoteShape shape) throws CellRefused {
        List<PixelPoint> points = PointsText.parse("points", text, "the note", HOW);
        if (points.size() != shape.points()) {
            throw new CellRefused(
                    "points",
                    "a note of the shape " + shape.word() + " has " + shape.points()
                            + (shape.points() == 1 ? " point" : " points") + ", not " + points.size() + HOW);
        }
        return points;
    }

    private static Optional<PhotoScale> scale(Cells cells, NoteShape shape) throws CellRefused {
        Optional<String> text = cells.raw("scale");
        if (shape == NoteShape.MEASURE) {
            return Optional.of(ScaleText.parse("scale", need("scale", text)));
        }
        if (text.isPresent()) {
            throw new CellRefused("scale", "only a note of the shape measure takes a scale; leave scale empty");
        }
        return Optional.empty();
    }

    @Override
    public Map<String, String> cells(PhotoNote note, RowContext context) {
        return new Row(context)
                .photo(Optional.of(note.photo()))
                .put("shape", note.shape().word())
                .put("points", PointsText.of(note.points()))
                .put("text", note.text())
                .put("scale", note.scale().map(ScaleText::of))
                .put(FilmMoment.COLUMN, FilmMoment.text(note.atSeconds()))
                .cells();
    }
}
