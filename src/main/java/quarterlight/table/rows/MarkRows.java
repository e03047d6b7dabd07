package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.util.List;
import java.util.Map;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.Mark;
import quarterlight.visit.MarkKind;
import quarterlight.visit.MarkStage;

/** Marks as read: stamps, tags, labels, castings; letters that could not be read are question marks. */
public final class MarkRows implements RowKind<Mark> {
    /** Ten years: more is a slip of the hand. */
    private static final int MOST_LEAD_DAYS = 3650;

    @Override
    public String word() {
        return "marks";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("part"),
                required("kind"),
                required("text"),
                optional("stage"),
                optional("pattern"),
                optional("expected"),
                optional("zone"),
                optional("view"),
                optional("x"),
                optional("y"),
                optional("photo"),
                optional("note"),
                optional("lead_days"));
    }

    @Override
    public Mark value(Cells cells) throws CellRefused {
        return new Mark(
                cells.required("part"),
                need("kind", cells.word("kind", MarkKind.class)),
                cells.required("text"),
                cells.word("stage", MarkStage.class),
                cells.text("pattern"),
                cells.text("expected"),
                cells.zone("zone"),
                cells.point(),
                cells.photoId("photo"),
                cells.text("note"),
                cells.wholeNumber("lead_days", MOST_LEAD_DAYS));
    }

    @Override
    public Map<String, String> cells(Mark mark, RowContext context) {
        return new Row(context)
                .put("part", mark.part())
                .put("kind", mark.kind().word())
                .put("text", mark.text())
                .put("stage", mark.stage().map(MarkStage::word))
                .put("pattern", mark.pattern())
                .put("expected", mark.expected())
                .put("zone", mark.zone())
                .point(mark.point())
                .photo(mark.photo())
                .put("note", mark.note())
                .put("lead_days", mark.leadDays())
                .cells();
    }
}
