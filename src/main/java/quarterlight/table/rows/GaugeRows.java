package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.NumberText;
import quarterlight.table.cell.RowContext;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.GaugeCheck;
import quarterlight.visit.GaugeMoment;
import quarterlight.visit.GaugeSurface;
import quarterlight.visit.GaugeValue;

/** Gauge checks on bare metal or a shim; {@code nominal}, {@code shown} and {@code nominal_tolerance} are in {@code unit}. */
public final class GaugeRows implements RowKind<GaugeCheck> {
    private static final MathContext TEN_DIGITS = new MathContext(10);

    @Override
    public String word() {
        return "gauge";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("when"),
                required("on"),
                required("nominal"),
                required("shown"),
                required("unit"),
                optional("nominal_tolerance"),
                optional("gauge_tolerance_percent"),
                optional("gauge_tolerance_um"),
                optional("note"));
    }

    @Override
    public GaugeCheck value(Cells cells) throws CellRefused {
        GaugeSurface on = need("on", cells.word("on", GaugeSurface.class));
        ThicknessUnit unit = need("unit", cells.word("unit", ThicknessUnit.class));
        OptionalDouble tolerance = cells.notNegative("nominal_tolerance");
        return new GaugeCheck(
                need("when", cells.word("when", GaugeMoment.class)),
                on,
                new GaugeValue.Measured(nominal(cells, on), unit),
                new GaugeValue.Measured(need("shown", cells.number("shown")), unit),
                tolerance.isPresent() ? OptionalDouble.of(unit.toUm(tolerance.getAsDouble())) : tolerance,
                cells.notNegative("gauge_tolerance_percent"),
                cells.notNegative("gauge_tolerance_um"),
                cells.text("note"));
    }

    private static BigDecimal nominal(Cells cells, GaugeSurface on) throws CellRefused {
        Optional<BigDecimal> nominal = cells.number("nominal");
        if (on == GaugeSurface.BARE) {
            if (nominal.isPresent() && nominal.get().signum() != 0) {
                throw new CellRefused(
                        "nominal",
                        nominal.get().toPlainString() + " is given for bare metal, which is 0; write 0, or on = shim");
            }
            return nominal.orElse(BigDecimal.ZERO);
        }
        BigDecimal thickness = need("nominal", nominal);
        if (thickness.signum() <= 0) {
            throw new CellRefused(
                    "nominal", thickness.toPlainString() + " is no thickness of a shim; give the number printed on it");
        }
        return thickness;
    }

    @Override
    public Map<String, String> cells(GaugeCheck check, RowContext context) {
        return new Row(context)
                .put("when", check.when().word())
                .put("on", check.on().word())
                .put("nominal", check.nominal().typed().toPlainString())
                .put("shown", typedIn(check.nominal().unit(), check.shown()))
                .put("unit", check.nominal().unit().word())
                .put("nominal_tolerance", inUnit(check.nominal().unit(), check.nominalToleranceUm()))
                .put("gauge_tolerance_percent", plain(check.gaugeTolerancePercent()))
                .put("gauge_tolerance_um", plain(check.gaugeToleranceUm()))
                .put("note", check.note())
                .cells();
    }

    private static String typedIn(ThicknessUnit unit, GaugeValue.Measured value) {
        return value.unit() == unit
                ? value.typed().toPlainString()
                : rounded(value.thickness().in(unit));
    }

    private static Optional<String> inUnit(ThicknessUnit unit, OptionalDouble um) {
        return um.isPresent() ? Optional.of(rounded(unit.fromUm(um.getAsDouble()))) : Optional.empty();
    }

    private static String rounded(double value) {
        return NumberText.of(new BigDecimal(value).round(TEN_DIGITS).doubleValue());
    }

    private static Optional<String> plain(OptionalDouble value) {
        return value.isPresent() ? Optional.of(NumberText.of(value.getAsDouble())) : Optional.empty();
    }
}
