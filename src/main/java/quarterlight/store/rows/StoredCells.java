package quarterlight.store.rows;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.row.CellSink;
import quarterlight.visit.row.Field;
import quarterlight.visit.row.Shape;
import quarterlight.visit.row.ShownThickness;

/** The filled cells of one row on their way into the database, by column; what is not filled becomes NULL. */
final class StoredCells implements CellSink {
    private final Map<String, Object> cells = new HashMap<>();

    /** The cells of these columns in their order, for binding. */
    RowValues inOrder(List<String> columns) {
        RowValues ordered = new RowValues();
        columns.forEach(column -> ordered.value(cells.get(column)));
        return ordered;
    }

    @Override
    public String name(Field<?, ?> field) {
        return field.stored();
    }

    /** A text; a NUL in it would end it early in SQL, so it becomes the replacement character. */
    @Override
    public void text(String column, String value) {
        cells.put(column, RowValues.plain(value));
    }

    @Override
    public void word(String column, Worded value) {
        text(column, value.word());
    }

    @Override
    public void flag(String column, boolean value) {
        count(column, value ? 1 : 0);
    }

    @Override
    public void decimal(String column, BigDecimal value) {
        text(column, value.toString());
    }

    @Override
    public void amount(String column, double value) {
        cells.put(column, value);
    }

    @Override
    public void count(String column, int value) {
        cells.put(column, (long) value);
    }

    @Override
    public void time(String column, LocalDateTime value) {
        text(column, value.toString());
    }

    @Override
    public void date(String column, PartialDate value) {
        text(column, value.text());
    }

    @Override
    public void zone(String column, ZoneId value) {
        text(column, value.value());
    }

    @Override
    public void photo(String column, PhotoId value) {
        cells.put(column, value.value());
    }

    /** The first photo by its number, the numbers of the others between blanks. */
    @Override
    public void photos(String column, List<PhotoId> value) {
        value.stream().findFirst().ifPresent(first -> photo(column, first));
        if (value.size() > 1) {
            text(
                    Shape.moreOf(column),
                    value.stream().skip(1).map(id -> Long.toString(id.value())).collect(Collectors.joining(" ")));
        }
    }

    @Override
    public void point(String column, ViewPoint value) {
        word(column, value.view());
        amount("x", value.x());
        amount("y", value.y());
    }

    @Override
    public void outline(String column, Outline value) {
        text(column, TraceText.of(value));
    }

    @Override
    public void scale(String column, PhotoScale value) {
        text(column, TraceText.of(value));
    }

    @Override
    public void points(String column, List<PixelPoint> value) {
        text(column, TraceText.of(value));
    }

    @Override
    public void gaugeValue(String column, GaugeValue value) {
        if (value instanceof GaugeValue.Measured number) {
            text("outcome", StoredRow.MEASURED);
            measured("typed", "unit", "thickness_um", number);
        } else if (value instanceof GaugeValue.Range range) {
            text("outcome", StoredRow.RANGE);
            decimal("typed", range.low());
            decimal("typed_high", range.high());
            word("unit", range.unit());
        } else {
            text("outcome", value instanceof GaugeValue.NoMetal ? StoredRow.NONE : StoredRow.OVER);
        }
    }

    private void measured(String typed, String unit, String um, GaugeValue.Measured number) {
        decimal(typed, number.typed());
        word(unit, number.unit());
        amount(um, number.thickness().um());
    }

    @Override
    public void shownThickness(String column, ShownThickness value) {
        measured("nominal_typed", "nominal_unit", "nominal_um", value.nominal());
        measured("shown_typed", "shown_unit", "shown_um", value.shown());
        value.toleranceUm().ifPresent(um -> amount("nominal_tolerance_um", um));
    }
}
