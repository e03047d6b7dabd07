package quarterlight.table.cell;

import static quarterlight.language.Sentences.say;
import static quarterlight.visit.row.FieldReader.need;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.table.text.NumberText;
import quarterlight.table.text.Quoted;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.ShownThickness;

/** The cells of a row that hold what a gauge showed. */
final class GaugeCells {
    static final String NONE = "none";
    static final String OVER = "over";
    static final String UNIT = "unit";
    static final String SHOWN = "shown";
    static final String TOLERANCE = "nominal_tolerance";

    private static final Pattern RANGE =
            Pattern.compile("(\\d{1,6}(?:\\.\\d{1,4})?)\\s*[-\u2013]\\s*(\\d{1,6}(?:\\.\\d{1,4})?)");
    /** Below this a number of um is more likely one of mils: a single coat of paint has 20 um or more. Common practice. */
    private static final BigDecimal MIN_UM = BigDecimal.valueOf(12);

    private static final MathContext TEN_DIGITS = new MathContext(10);

    private final Cells cells;

    GaugeCells(Cells cells) {
        this.cells = cells;
    }

    /** A number in its unit, {@code none} (no metal found) or {@code over} (beyond the range). */
    Optional<GaugeValue> value(String column) throws CellRefused {
        Optional<ThicknessUnit> unit = unit();
        Optional<String> text = cells.text(column).map(cell -> cell.toLowerCase(Locale.ROOT));
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (text.get().equals(NONE)) {
            return Optional.of(new GaugeValue.NoMetal());
        }
        if (text.get().equals(OVER)) {
            return Optional.of(new GaugeValue.OverRange());
        }
        Optional<GaugeValue.Range> range = range(text.get(), unit);
        if (range.isPresent()) {
            requirePlausible(
                    column,
                    new GaugeValue.Measured(range.get().low(), range.get().unit()));
            requirePlausible(
                    column,
                    new GaugeValue.Measured(range.get().high(), range.get().unit()));
            return range.map(said -> said);
        }
        BigDecimal typed = need(column, cells.decimal(column));
        GaugeValue.Measured measured = new GaugeValue.Measured(typed, need(UNIT, unit));
        requirePlausible(column, measured);
        return Optional.of(measured);
    }

    private Optional<ThicknessUnit> unit() throws CellRefused {
        Optional<String> cell = cells.raw(UNIT);
        Optional<ThicknessUnit> unit = cell.flatMap(ThicknessUnit::said);
        if (cell.isPresent() && unit.isEmpty()) {
            throw new CellRefused(UNIT, say("cell.gauge.unit", Quoted.of(cell.get())));
        }
        return unit;
    }

    /** A range as said: {@code 4-5}. */
    private static Optional<GaugeValue.Range> range(String text, Optional<ThicknessUnit> unit) throws CellRefused {
        Matcher m = RANGE.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        BigDecimal low = new BigDecimal(m.group(1));
        BigDecimal high = new BigDecimal(m.group(2));
        if (low.compareTo(high) > 0) {
            throw new CellRefused("value", say("cell.gauge.downward", Quoted.of(text)));
        }
        return Optional.of(new GaugeValue.Range(low, high, need(UNIT, unit)));
    }

    private void requirePlausible(String column, GaugeValue.Measured measured) throws CellRefused {
        Thickness range = cells.context().facts().gaugeRange();
        String shown = measured.typed().toPlainString() + " " + measured.unit().word();
        if (measured.typed().signum() < 0) {
            throw new CellRefused(column, say("cell.gauge.below", shown));
        }
        if (measured.unit() == ThicknessUnit.UM
                && measured.typed().signum() > 0
                && measured.typed().compareTo(MIN_UM) < 0
                && cells.raw("note").isEmpty()) {
            throw new CellRefused(column, say("cell.gauge.thin", shown));
        }
        if (measured.thickness().compareTo(range) > 0) {
            throw new CellRefused(
                    column,
                    say(
                            "cell.gauge.range",
                            shown,
                            String.format(
                                    Locale.ROOT, "%.0f", measured.thickness().um()),
                            String.format(Locale.ROOT, "%.0f", range.um())));
        }
    }

    /** What stands on a shim, or 0 for bare metal, and what the gauge showed on it. */
    ShownThickness shown(String column) throws CellRefused {
        GaugeSurface on = need("on", cells.word("on", GaugeSurface.class));
        ThicknessUnit unit = need(UNIT, unit());
        Optional<Double> tolerance = cells.amount(TOLERANCE);
        return new ShownThickness(
                new GaugeValue.Measured(nominal(column, on), unit),
                new GaugeValue.Measured(need(SHOWN, cells.decimal(SHOWN)), unit),
                tolerance.map(typed -> OptionalDouble.of(unit.toUm(typed))).orElseGet(OptionalDouble::empty));
    }

    private BigDecimal nominal(String column, GaugeSurface on) throws CellRefused {
        Optional<BigDecimal> nominal = cells.decimal(column);
        if (on == GaugeSurface.BARE) {
            if (nominal.isPresent() && nominal.get().signum() != 0) {
                throw new CellRefused(
                        column, say("cell.gauge.bare", nominal.get().toPlainString()));
            }
            return nominal.orElse(BigDecimal.ZERO);
        }
        BigDecimal thickness = need(column, nominal);
        if (thickness.signum() <= 0) {
            throw new CellRefused(column, say("cell.gauge.shim", thickness.toPlainString()));
        }
        return thickness;
    }

    static String typedIn(ThicknessUnit unit, GaugeValue.Measured value) {
        return value.unit() == unit
                ? value.typed().toPlainString()
                : rounded(value.thickness().in(unit));
    }

    static String rounded(double value) {
        return NumberText.of(new BigDecimal(value).round(TEN_DIGITS).doubleValue());
    }
}
