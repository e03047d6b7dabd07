package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.util.List;
import java.util.Map;
import quarterlight.coverage.Want;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.CoverageWish;

/** What this visit must bring, in place of the usual rules. */
public final class CoverageRows implements RowKind<CoverageWish> {
    @Override
    public String word() {
        return "coverage";
    }

    @Override
    public List<Column> columns() {
        return List.of(required("evidence"), required("want"), optional("zone"));
    }

    @Override
    public CoverageWish value(Cells cells) throws CellRefused {
        return new CoverageWish(
                cells.zone("zone"),
                need("evidence", cells.word("evidence", Want.class)).word(),
                need("want", cells.wholeNumber("want", CoverageWish.MOST)));
    }

    @Override
    public Map<String, String> cells(CoverageWish wish, RowContext context) {
        return new Row(context)
                .put("evidence", wish.evidence())
                .put("want", wish.want())
                .put("zone", wish.zone())
                .cells();
    }
}
