package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.Basis;
import quarterlight.visit.Photo;
import quarterlight.visit.Severity;
import quarterlight.visit.Statement;
import quarterlight.visit.StatementKind;

/** Statements about zones, with kind, severity, basis and photos: several between upright strokes. */
public final class StatementRows implements RowKind<Statement> {
    @Override
    public String word() {
        return "statements";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("zone"),
                required("kind"),
                required("text"),
                optional("severity"),
                optional("basis"),
                optional("photo"),
                optional(FilmMoment.COLUMN));
    }

    @Override
    public Statement value(Cells cells) throws CellRefused {
        List<Photo> photos = cells.photos("photo");
        Optional<Photo> photo = photos.stream().findFirst();
        return new Statement(
                need("zone", cells.zone("zone")),
                need("kind", cells.word("kind", StatementKind.class)),
                cells.required("text"),
                cells.word("severity", Severity.class),
                cells.word("basis", Basis.class),
                photo.map(Photo::id),
                FilmMoment.read(cells, photo),
                photos.stream().skip(1).map(Photo::id).toList());
    }

    @Override
    public Map<String, String> cells(Statement statement, RowContext context) {
        return new Row(context)
                .put("zone", statement.zone())
                .put("kind", statement.kind().word())
                .put("text", statement.text())
                .put("severity", statement.severity().map(Severity::word))
                .put("basis", statement.basis().map(Basis::word))
                .photos(statement.photos())
                .put(FilmMoment.COLUMN, FilmMoment.text(statement.atSeconds()))
                .cells();
    }
}
