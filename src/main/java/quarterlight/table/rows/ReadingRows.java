package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.RowContext;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.GaugeMode;
import quarterlight.visit.GaugeValue;
import quarterlight.visit.Reading;

/** Gauge readings: {@code value} is a number in {@code unit}, {@code none} (no metal found) or {@code over} (beyond the range). */
public final class ReadingRows implements RowKind<Reading> {
    private static final String NONE = "none";
    private static final String OVER = "over";

    @Override
    public String word() {
        return "readings";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("zone"),
                required("value"),
                required("unit"),
                optional("time"),
                optional("spot"),
                optional("view"),
                optional("x"),
                optional("y"),
                optional("mode"),
                optional("exclude"),
                optional("note"));
    }

    @Override
    public Reading value(Cells cells) throws CellRefused {
        return new Reading(
                need("zone", cells.zone("zone")),
                shown(cells),
                cells.moment("time"),
                cells.text("spot"),
                cells.point(),
                cells.word("mode", GaugeMode.class),
                cells.text("exclude"),
                cells.text("note"));
    }

    private static GaugeValue shown(Cells cells) throws CellRefused {
        var unit = cells.word("unit", ThicknessUnit.class);
        String text = cells.required("value").toLowerCase(Locale.ROOT);
        if (text.equals(NONE)) {
            return new GaugeValue.NoMetal();
        }
        if (text.equals(OVER)) {
            return new GaugeValue.OverRange();
        }
        BigDecimal typed = need("value", cells.number("value"));
        GaugeValue.Measured measured = new GaugeValue.Measured(typed, need("unit", unit));
        requirePlausible(measured, cells.context().facts().gaugeRange());
        return measured;
    }

    private static void requirePlausible(GaugeValue.Measured measured, Thickness range) throws CellRefused {
        String shown = measured.typed().toPlainString() + " " + measured.unit().word();
        if (measured.typed().signum() < 0) {
            throw new CellRefused(
                    "value",
                    shown + " is below 0; correct the typing, or check the gauge on bare metal and read again");
        }
        if (measured.thickness().compareTo(range) > 0) {
            throw new CellRefused(
                    "value",
                    shown
                            + String.format(
                                    Locale.ROOT,
                                    " (%.0f um) lies above the gauge's range of %.0f um; check the unit, write over, or set gauge-range",
                                    measured.thickness().um(),
                                    range.um()));
        }
    }

    @Override
    public Map<String, String> cells(Reading reading, RowContext context) {
        Row row = new Row(context).put("zone", reading.zone());
        if (reading.value() instanceof GaugeValue.Measured measured) {
            row.put("value", measured.typed().toPlainString())
                    .put("unit", measured.unit().word());
        } else {
            row.put("value", reading.value() instanceof GaugeValue.NoMetal ? NONE : OVER);
        }
        return row.put("time", reading.time())
                .put("spot", reading.spot())
                .point(reading.point())
                .put("mode", reading.mode().map(GaugeMode::word))
                .put("exclude", reading.exclude())
                .put("note", reading.note())
                .cells();
    }
}
