package quarterlight.table.cell;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.table.text.NumberText;
import quarterlight.table.text.OutlineText;
import quarterlight.table.text.PointsText;
import quarterlight.table.text.ScaleText;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.row.CellSink;
import quarterlight.visit.row.Field;
import quarterlight.visit.row.ShownThickness;

/** Gathers the filled cells of one row that is to be written, as {@link Cells} reads them. */
public final class CellsOut implements CellSink {
    private final RowContext context;
    private final Map<String, String> cells = new HashMap<>();

    public CellsOut(RowContext context) {
        this.context = Objects.requireNonNull(context, "context");
    }

    /** The filled cells by column. */
    public Map<String, String> cells() {
        return Map.copyOf(cells);
    }

    @Override
    public String name(Field<?, ?> field) {
        return field.column().name();
    }

    @Override
    public void text(String column, String value) {
        cells.put(column, value);
    }

    @Override
    public void word(String column, Worded value) {
        text(column, value.word());
    }

    @Override
    public void flag(String column, boolean value) {
        text(column, value ? "yes" : "no");
    }

    @Override
    public void decimal(String column, BigDecimal value) {
        text(column, value.toPlainString());
    }

    @Override
    public void amount(String column, double value) {
        text(column, NumberText.of(value));
    }

    @Override
    public void count(String column, int value) {
        text(column, Integer.toString(value));
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
        text(column, context.nameOf(value));
    }

    @Override
    public void photos(String column, List<PhotoId> value) {
        if (!value.isEmpty()) {
            text(column, value.stream().map(context::nameOf).collect(Collectors.joining(PhotoCells.BETWEEN)));
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
        text(column, OutlineText.of(value));
    }

    @Override
    public void scale(String column, PhotoScale value) {
        text(column, ScaleText.of(value));
    }

    @Override
    public void points(String column, List<PixelPoint> value) {
        text(column, PointsText.of(value));
    }

    @Override
    public void gaugeValue(String column, GaugeValue value) {
        if (value instanceof GaugeValue.Measured measured) {
            decimal(column, measured.typed());
            word(GaugeCells.UNIT, measured.unit());
        } else if (value instanceof GaugeValue.Range range) {
            text(column, range.typed());
            word(GaugeCells.UNIT, range.unit());
        } else {
            text(column, value instanceof GaugeValue.NoMetal ? GaugeCells.NONE : GaugeCells.OVER);
        }
    }

    @Override
    public void shownThickness(String column, ShownThickness value) {
        ThicknessUnit unit = value.nominal().unit();
        decimal(column, value.nominal().typed());
        text(GaugeCells.SHOWN, GaugeCells.typedIn(unit, value.shown()));
        word(GaugeCells.UNIT, unit);
        value.toleranceUm().ifPresent(um -> text(GaugeCells.TOLERANCE, GaugeCells.rounded(unit.fromUm(um))));
    }
}
