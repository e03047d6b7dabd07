package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.Trial;
import quarterlight.visit.TrialResult;

/** Functions that were tried, and how they behaved. */
public final class TrialRows implements RowKind<Trial> {
    @Override
    public String word() {
        return "trials";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("item"),
                required("result"),
                optional("value"),
                optional("unit"),
                optional("zone"),
                optional("note"));
    }

    @Override
    public Trial value(Cells cells) throws CellRefused {
        Optional<BigDecimal> value = cells.number("value");
        Optional<String> unit = cells.text("unit");
        if (unit.isPresent() && value.isEmpty()) {
            throw new CellRefused("value", "a unit is given without a value; give the number, or leave the unit empty");
        }
        return new Trial(
                cells.required("item"),
                need("result", cells.word("result", TrialResult.class)),
                value,
                unit,
                cells.zone("zone"),
                cells.text("note"));
    }

    @Override
    public Map<String, String> cells(Trial trial, RowContext context) {
        return new Row(context)
                .put("item", trial.item())
                .put("result", trial.result().word())
                .put("value", trial.value().map(BigDecimal::toPlainString))
                .put("unit", trial.unit())
                .put("zone", trial.zone())
                .put("note", trial.note())
                .cells();
    }
}
