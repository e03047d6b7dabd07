package quarterlight.store.rows;

import java.math.BigDecimal;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.CellSource;
import quarterlight.visit.row.Field;
import quarterlight.visit.row.Shape;
import quarterlight.visit.row.ShownThickness;

/** The present row of a result as the catalog of kinds and facts reads it; a cell that cannot be read is refused by its column. */
final class StoredRow implements CellSource {
    static final String MEASURED = "measured";
    static final String NONE = "none";
    static final String OVER = "over";
    static final String RANGE = "range";

    private final Row row;

    StoredRow(Row row) {
        this.row = row;
    }

    /** A question to the row. */
    private interface Ask<T> {
        T ask(Row row) throws SQLException;
    }

    private <T> T cell(String column, Ask<T> ask) throws CellRefused {
        try {
            return ask.ask(row);
        } catch (SQLException e) {
            throw new CellRefused(column, e.getMessage());
        }
    }

    @Override
    public String name(Field<?, ?> field) {
        return field.stored();
    }

    @Override
    public Optional<String> text(String column) throws CellRefused {
        return cell(column, r -> r.someText(column));
    }

    @Override
    public <E extends Enum<E> & Worded> Optional<E> word(String column, Class<E> type) throws CellRefused {
        return cell(column, r -> r.someWord(type, column));
    }

    @Override
    public Optional<Boolean> flag(String column) throws CellRefused {
        return cell(column, r -> r.someFlag(column));
    }

    @Override
    public Optional<BigDecimal> decimal(String column) throws CellRefused {
        return text(column).map(BigDecimal::new);
    }

    @Override
    public Optional<Double> amount(String column) throws CellRefused {
        return cell(column, r -> r.someRealValue(column));
    }

    @Override
    public Optional<Integer> count(String column, int max) throws CellRefused {
        OptionalInt value = cell(column, r -> r.someInteger(column));
        return value.isPresent() ? Optional.of(value.getAsInt()) : Optional.empty();
    }

    @Override
    public Optional<LocalDateTime> time(String column) throws CellRefused {
        return cell(column, r -> r.someTime(column));
    }

    @Override
    public Optional<PartialDate> date(String column) throws CellRefused {
        return text(column).isPresent() ? Optional.of(cell(column, r -> r.date(column))) : Optional.empty();
    }

    @Override
    public Optional<ZoneId> zone(String column) throws CellRefused {
        return cell(column, r -> r.someZone(column));
    }

    @Override
    public Optional<ZoneId> zoneOfPhoto(String column) throws CellRefused {
        return zone(column);
    }

    @Override
    public Optional<PhotoId> photo(String column) throws CellRefused {
        return cell(column, r -> r.somePhoto(column));
    }

    @Override
    public Optional<PhotoId> still(String column) throws CellRefused {
        return photo(column);
    }

    @Override
    public List<PhotoId> photos(String column) throws CellRefused {
        Optional<PhotoId> first = photo(column);
        List<PhotoId> more = cell(column, r -> r.photos(Shape.moreOf(column)));
        return Stream.concat(first.stream(), more.stream()).toList();
    }

    @Override
    public Optional<Double> filmMoment(String column) throws CellRefused {
        return amount(column);
    }

    @Override
    public Optional<ViewPoint> point(String column) throws CellRefused {
        return cell(column, Row::point);
    }

    @Override
    public Optional<Outline> outline(String column) throws CellRefused {
        return text(column).map(TraceText::outline);
    }

    @Override
    public Optional<PhotoScale> scale(String column) throws CellRefused {
        return text(column).map(TraceText::scale);
    }

    @Override
    public Optional<List<PixelPoint>> points(String column) throws CellRefused {
        return text(column).map(TraceText::pointList);
    }

    @Override
    public Optional<String> datePattern(String column) throws CellRefused {
        return text(column);
    }

    @Override
    public Optional<GaugeValue> gaugeValue(String column) throws CellRefused {
        String outcome = cell("outcome", r -> r.text("outcome"));
        return Optional.of(
                switch (outcome) {
                    case MEASURED -> measured("typed", "unit");
                    case RANGE ->
                        new GaugeValue.Range(
                                cell("typed", r -> r.decimal("typed")),
                                cell("typed_high", r -> r.decimal("typed_high")),
                                cell("unit", r -> r.word(ThicknessUnit.class, "unit")));
                    case NONE -> new GaugeValue.NoMetal();
                    case OVER -> new GaugeValue.OverRange();
                    default -> throw new CellRefused("outcome", "column outcome holds \"" + outcome + "\"");
                });
    }

    private GaugeValue.Measured measured(String typed, String unit) throws CellRefused {
        return new GaugeValue.Measured(
                cell(typed, r -> r.decimal(typed)), cell(unit, r -> r.word(ThicknessUnit.class, unit)));
    }

    @Override
    public Optional<ShownThickness> shownThickness(String column) throws CellRefused {
        OptionalDouble tolerance = cell("nominal_tolerance_um", r -> r.someReal("nominal_tolerance_um"));
        return Optional.of(new ShownThickness(
                measured("nominal_typed", "nominal_unit"), measured("shown_typed", "shown_unit"), tolerance));
    }

    @Override
    public Optional<String> older(String column) {
        return Optional.empty();
    }
}
