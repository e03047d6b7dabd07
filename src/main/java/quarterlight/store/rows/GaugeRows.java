package quarterlight.store.rows;

import java.sql.SQLException;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.GaugeCheck;
import quarterlight.visit.GaugeMode;
import quarterlight.visit.GaugeMoment;
import quarterlight.visit.GaugeSurface;
import quarterlight.visit.GaugeValue;
import quarterlight.visit.Reading;

/** Readings and gauge checks. A number is kept as typed with its unit, and beside it in um for queries by hand. */
public final class GaugeRows {
    private static final String MEASURED = "measured";
    private static final String NONE = "none";
    private static final String OVER = "over";

    public static final TableShape<Reading> READINGS = TableShape.of(
            "reading",
            "zone, outcome, typed, unit, thickness_um, time, spot, view, x, y, mode, exclude, note",
            GaugeRows::write,
            GaugeRows::reading);

    public static final TableShape<GaugeCheck> CHECKS = TableShape.of(
            "gauge_check",
            "moment, surface, nominal_typed, nominal_unit, nominal_um, shown_typed, shown_unit, shown_um,"
                    + " nominal_tolerance_um, gauge_tolerance_percent, gauge_tolerance_um, note",
            GaugeRows::write,
            GaugeRows::check);

    private GaugeRows() {}

    private static Cells write(Reading reading) {
        Cells cells = new Cells().zone(reading.zone());
        outcome(cells, reading.value());
        return cells.textOf(reading.time())
                .textOf(reading.spot())
                .point(reading.point())
                .word(reading.mode())
                .textOf(reading.exclude())
                .textOf(reading.note());
    }

    private static void outcome(Cells cells, GaugeValue value) {
        if (value instanceof GaugeValue.Measured number) {
            measured(cells.text(MEASURED), number);
        } else {
            cells.text(value instanceof GaugeValue.NoMetal ? NONE : OVER)
                    .none()
                    .none()
                    .none();
        }
    }

    private static Cells measured(Cells cells, GaugeValue.Measured number) {
        return cells.textOf(number.typed())
                .word(number.unit())
                .real(number.thickness().um());
    }

    private static Reading reading(Row row) throws SQLException {
        return new Reading(
                row.zone("zone"),
                value(row),
                row.someTime("time"),
                row.someText("spot"),
                row.point(),
                row.someWord(GaugeMode.class, "mode"),
                row.someText("exclude"),
                row.someText("note"));
    }

    private static GaugeValue value(Row row) throws SQLException {
        String outcome = row.text("outcome");
        return switch (outcome) {
            case MEASURED -> measured(row, "typed", "unit");
            case NONE -> new GaugeValue.NoMetal();
            case OVER -> new GaugeValue.OverRange();
            default -> throw new SQLException("column outcome holds \"" + outcome + "\"");
        };
    }

    private static GaugeValue.Measured measured(Row row, String typed, String unit) throws SQLException {
        return new GaugeValue.Measured(row.decimal(typed), row.word(ThicknessUnit.class, unit));
    }

    private static Cells write(GaugeCheck check) {
        Cells cells = new Cells().word(check.when()).word(check.on());
        measured(cells, check.nominal());
        measured(cells, check.shown());
        return cells.real(check.nominalToleranceUm())
                .real(check.gaugeTolerancePercent())
                .real(check.gaugeToleranceUm())
                .textOf(check.note());
    }

    private static GaugeCheck check(Row row) throws SQLException {
        return new GaugeCheck(
                row.word(GaugeMoment.class, "moment"),
                row.word(GaugeSurface.class, "surface"),
                measured(row, "nominal_typed", "nominal_unit"),
                measured(row, "shown_typed", "shown_unit"),
                row.someReal("nominal_tolerance_um"),
                row.someReal("gauge_tolerance_percent"),
                row.someReal("gauge_tolerance_um"),
                row.someText("note"));
    }
}
