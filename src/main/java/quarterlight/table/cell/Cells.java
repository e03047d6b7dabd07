package quarterlight.table.cell;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.PartialDate;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.table.text.DateTimeText;
import quarterlight.table.text.Decimals;
import quarterlight.table.text.OutlineText;
import quarterlight.table.text.PointsText;
import quarterlight.table.text.Quoted;
import quarterlight.table.text.ScaleText;
import quarterlight.units.Worded;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.CellSource;
import quarterlight.visit.row.Field;
import quarterlight.visit.row.ShownThickness;

/**
 * One row of a table by column. Outer blanks are ignored; a blank cell and a missing column are the same: not given.
 * Every method refuses a cell that is not what it should be.
 */
public final class Cells implements CellSource {
    private static final int MAX_TEXT = 10_000;

    private final Map<String, String> cells;
    private final Decimals decimals;
    private final RowContext context;
    private final PhotoCells photos;

    /** @param decimalComma whether a number may have a comma for its decimal sign */
    public Cells(Map<String, String> cells, boolean decimalComma, RowContext context) {
        this(cells, Decimals.of(decimalComma), context);
    }

    /** @param decimals how the numbers of the table are written */
    public Cells(Map<String, String> cells, Decimals decimals, RowContext context) {
        this.cells = Map.copyOf(cells);
        this.decimals = Objects.requireNonNull(decimals, "decimals");
        this.context = Objects.requireNonNull(context, "context");
        this.photos = new PhotoCells(this);
    }

    public RowContext context() {
        return context;
    }

    public Optional<String> raw(String column) {
        String cell = cells.getOrDefault(column, "").replace('\u00a0', ' ').strip();
        return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
    }

    @Override
    public String name(Field<?, ?> field) {
        return field.column().name();
    }

    @Override
    public Optional<String> text(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        if (cell.isPresent() && cell.get().length() > MAX_TEXT) {
            throw new CellRefused(column, say("cell.text.long", cell.get().length(), MAX_TEXT));
        }
        return cell;
    }

    @Override
    public <E extends Enum<E> & Worded> Optional<E> word(String column, Class<E> type) throws CellRefused {
        Optional<String> cell = raw(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<E> found = Worded.find(type, cell.get());
        if (found.isEmpty()) {
            throw new CellRefused(column, say("cell.none-of", Quoted.of(cell.get()), Worded.words(type)));
        }
        return found;
    }

    @Override
    public Optional<Boolean> flag(String column) throws CellRefused {
        Optional<String> cell = raw(column).map(text -> text.toLowerCase(Locale.ROOT));
        if (cell.isPresent() && !cell.get().equals("yes") && !cell.get().equals("no")) {
            throw new CellRefused(column, say("cell.yes-no", Quoted.of(cell.get())));
        }
        return cell.map("yes"::equals);
    }

    @Override
    public Optional<BigDecimal> decimal(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> ambiguity = decimals.ambiguity(cell.get());
        if (ambiguity.isPresent()) {
            throw new CellRefused(column, ambiguity.get());
        }
        Optional<BigDecimal> number = decimals.parse(cell.get());
        if (number.isEmpty()) {
            throw new CellRefused(column, notANumber(cell.get()));
        }
        return number;
    }

    private String notANumber(String text) {
        if (decimals.lacksComma(text)) {
            return say("cell.number.comma", Quoted.of(text), text.replace(',', '.'));
        }
        return say("cell.number", Quoted.of(text));
    }

    @Override
    public Optional<Double> amount(String column) throws CellRefused {
        Optional<BigDecimal> number = decimal(column);
        if (number.isPresent() && number.get().signum() < 0) {
            throw new CellRefused(column, say("cell.below", number.get().toPlainString()));
        }
        return number.map(BigDecimal::doubleValue);
    }

    @Override
    public Optional<Integer> count(String column, int max) throws CellRefused {
        Optional<BigDecimal> number = decimal(column);
        if (number.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal value = number.get().stripTrailingZeros();
        if (value.scale() > 0 || value.signum() < 0 || value.compareTo(BigDecimal.valueOf(max)) > 0) {
            throw new CellRefused(column, say("cell.whole", number.get().toPlainString(), max));
        }
        return Optional.of(value.intValueExact());
    }

    @Override
    public Optional<LocalDateTime> time(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> fault = DateTimeText.fault(cell.get(), context.facts().timezone());
        if (fault.isPresent()) {
            throw new CellRefused(column, fault.get());
        }
        return DateTimeText.parse(cell.get(), context.facts().timezone());
    }

    @Override
    public Optional<PartialDate> date(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<PartialDate> date = PartialDate.parse(cell.get());
        if (date.isEmpty()) {
            throw new CellRefused(column, say("cell.date", Quoted.of(cell.get())));
        }
        return date;
    }

    @Override
    public Optional<ZoneId> zone(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(context.zones().find(column, cell.get()));
    }

    @Override
    public Optional<ZoneId> zoneOfPhoto(String column) throws CellRefused {
        Optional<ZoneId> zone = zone(column);
        return zone.isPresent() ? zone : photos.onlyZone(column);
    }

    @Override
    public Optional<PhotoId> photo(String column) throws CellRefused {
        return photos.one(column).map(Photo::id);
    }

    @Override
    public Optional<PhotoId> still(String column) throws CellRefused {
        return photos.still(column).map(Photo::id);
    }

    @Override
    public List<PhotoId> photos(String column) throws CellRefused {
        return photos.several(column).stream().map(Photo::id).toList();
    }

    @Override
    public Optional<Double> filmMoment(String column) throws CellRefused {
        return photos.moment(column);
    }

    /** The point of the columns view, x and y: all three or none. */
    @Override
    public Optional<ViewPoint> point(String column) throws CellRefused {
        Optional<View> view = word(column, View.class);
        Optional<Double> x = fraction("x");
        Optional<Double> y = fraction("y");
        if (view.isEmpty() && x.isEmpty() && y.isEmpty()) {
            return Optional.empty();
        }
        for (String each : new String[] {column, "x", "y"}) {
            if (raw(each).isEmpty()) {
                throw new CellRefused(each, say("cell.point", each));
            }
        }
        return Optional.of(new ViewPoint(view.orElseThrow(), x.orElseThrow(), y.orElseThrow()));
    }

    private Optional<Double> fraction(String column) throws CellRefused {
        Optional<BigDecimal> number = decimal(column);
        if (number.isPresent() && (number.get().signum() < 0 || number.get().compareTo(BigDecimal.ONE) > 0)) {
            throw new CellRefused(column, say("cell.fraction", number.get().toPlainString(), column));
        }
        return number.map(BigDecimal::doubleValue);
    }

    @Override
    public Optional<Outline> outline(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(OutlineText.parse(column, cell.get()));
    }

    @Override
    public Optional<PhotoScale> scale(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(ScaleText.parse(column, cell.get()));
    }

    @Override
    public Optional<List<PixelPoint>> points(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        return cell.isEmpty()
                ? Optional.empty()
                : Optional.of(PointsText.parse(column, cell.get(), say("cell.points.note"), say("cell.points.how")));
    }

    @Override
    public Optional<String> datePattern(String column) throws CellRefused {
        Optional<String> asked = text(column);
        if (asked.isPresent()) {
            context.requirePattern(column, asked.get());
        }
        return asked;
    }

    @Override
    public Optional<GaugeValue> gaugeValue(String column) throws CellRefused {
        return new GaugeCells(this).value(column);
    }

    @Override
    public Optional<ShownThickness> shownThickness(String column) throws CellRefused {
        return Optional.of(new GaugeCells(this).shown(column));
    }

    @Override
    public Optional<String> older(String column) {
        return raw(column);
    }
}
