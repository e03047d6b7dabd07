package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.util.List;
import java.util.Map;
import quarterlight.car.PartialDate;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.Feature;

/** Features that cars built between two dates have. */
public final class FeatureRows implements RowKind<Feature> {
    @Override
    public String word() {
        return "features";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("feature"),
                required("from"),
                required("to"),
                optional("fitted"),
                optional("zone"),
                optional("note"));
    }

    @Override
    public Feature value(Cells cells) throws CellRefused {
        PartialDate from = need("from", cells.date("from"));
        PartialDate to = need("to", cells.date("to"));
        if (to.last().isBefore(from.first())) {
            throw new CellRefused("to", to + " lies before from, " + from + "; swap the two dates");
        }
        return new Feature(
                cells.required("feature"), from, to, cells.yesOrNo("fitted"), cells.zone("zone"), cells.text("note"));
    }

    @Override
    public Map<String, String> cells(Feature feature, RowContext context) {
        return new Row(context)
                .put("feature", feature.feature())
                .put("from", feature.from())
                .put("to", feature.to())
                .put("fitted", feature.fitted().map(Row::yesOrNo))
                .put("zone", feature.zone())
                .put("note", feature.note())
                .cells();
    }
}
