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
import quarterlight.visit.Sign;
import quarterlight.visit.SignKind;

/** Signs seen, or looked for and not seen; {@code for} names the panel a sign elsewhere speaks for. */
public final class SignRows implements RowKind<Sign> {
    @Override
    public String word() {
        return "signs";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("zone"),
                required("sign"),
                required("seen"),
                optional("for"),
                optional("photo"),
                optional("note"));
    }

    @Override
    public Sign value(Cells cells) throws CellRefused {
        return new Sign(
                need("zone", cells.zone("zone")),
                need("sign", cells.word("sign", SignKind.class)),
                need("seen", cells.yesOrNo("seen")),
                cells.zone("for"),
                cells.photoId("photo"),
                cells.text("note"));
    }

    @Override
    public Map<String, String> cells(Sign sign, RowContext context) {
        return new Row(context)
                .put("zone", sign.zone())
                .put("sign", sign.kind().word())
                .put("seen", Row.yesOrNo(sign.seen()))
                .put("for", sign.speaksFor())
                .photo(sign.photo())
                .put("note", sign.note())
                .cells();
    }
}
