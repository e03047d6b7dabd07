package quarterlight.table.cell;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import quarterlight.car.PartialDate;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoId;
import quarterlight.visit.ViewPoint;

/**
 * One row of a table by column. Outer blanks are ignored; a blank cell and a missing column are the same: not given.
 * Every method refuses a cell that is not what it should be.
 */
public final class Cells {
    /** Stands between the names of several photos in one cell. */
    public static final String BETWEEN_PHOTOS = "|";

    private static final int LONGEST_TEXT = 10_000;

    private final Map<String, String> cells;
    private final Decimals decimals;
    private final RowContext context;

    /** @param decimalComma whether a number may have a comma for its decimal sign */
    public Cells(Map<String, String> cells, boolean decimalComma, RowContext context) {
        this(cells, Decimals.of(decimalComma), context);
    }

    /** @param decimals how the numbers of the table are written */
    public Cells(Map<String, String> cells, Decimals decimals, RowContext context) {
        this.cells = Map.copyOf(cells);
        this.decimals = Objects.requireNonNull(decimals, "decimals");
        this.context = Objects.requireNonNull(context, "context");
    }

    public RowContext context() {
        return context;
    }

    public Optional<String> raw(String column) {
        String cell = cells.getOrDefault(column, "").replace('\u00a0', ' ').strip();
        return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
    }

    public Optional<String> text(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        if (cell.isPresent() && cell.get().length() > LONGEST_TEXT) {
            throw new CellRefused(
                    column, "the text has " + cell.get().length() + " characters; keep it within " + LONGEST_TEXT);
        }
        return cell;
    }

    public String required(String column) throws CellRefused {
        return need(column, text(column));
    }

    public static <T> T need(String column, Optional<T> value) throws CellRefused {
        return value.orElseThrow(() -> new CellRefused(column, "the cell is empty; every row needs a " + column));
    }

    public Optional<ZoneId> zone(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(context.zones().find(column, cell.get()));
    }

    public Optional<Photo> photo(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(context.photos().find(column, cell.get()));
    }

    /** Photos named in one cell, each once, the first one first. */
    public List<Photo> photos(String column) throws CellRefused {
        List<Photo> found = new ArrayList<>();
        for (String name : raw(column).stream()
                .flatMap(cell -> Arrays.stream(cell.split(Pattern.quote(BETWEEN_PHOTOS), -1)))
                .map(String::strip)
                .toList()) {
            if (name.isEmpty()) {
                throw new CellRefused(column, "a name beside " + BETWEEN_PHOTOS + " is empty; name a photo there");
            }
            Photo photo = context.photos().find(column, name);
            if (found.contains(photo)) {
                throw new CellRefused(column, Quoted.of(name) + " is named twice; name each photo once");
            }
            found.add(photo);
        }
        return List.copyOf(found);
    }

    public Optional<PhotoId> photoId(String column) throws CellRefused {
        return photo(column).map(Photo::id);
    }

    public <E extends Enum<E> & Worded> Optional<E> word(String column, Class<E> type) throws CellRefused {
        Optional<String> cell = raw(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<E> found = Worded.find(type, cell.get());
        if (found.isEmpty()) {
            throw new CellRefused(column, Quoted.of(cell.get()) + " is none of " + Worded.words(type));
        }
        return found;
    }

    public Optional<Boolean> yesOrNo(String column) throws CellRefused {
        Optional<String> cell = raw(column).map(text -> text.toLowerCase(Locale.ROOT));
        if (cell.isPresent() && !cell.get().equals("yes") && !cell.get().equals("no")) {
            throw new CellRefused(column, Quoted.of(cell.get()) + " is neither yes nor no");
        }
        return cell.map("yes"::equals);
    }

    public Optional<BigDecimal> number(String column) throws CellRefused {
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
            return Quoted.of(text) + " has a decimal comma in a table with commas between its columns; write "
                    + text.replace(',', '.') + ", or put semicolons between the columns";
        }
        return Quoted.of(text) + " is not a number; write digits with one decimal sign at most, such as 4.5";
    }

    public OptionalDouble notNegative(String column) throws CellRefused {
        Optional<BigDecimal> number = number(column);
        if (number.isPresent() && number.get().signum() < 0) {
            throw new CellRefused(column, number.get().toPlainString() + " is below 0; give 0 or more");
        }
        return number.map(value -> OptionalDouble.of(value.doubleValue())).orElse(OptionalDouble.empty());
    }

    /** A whole number from 0 to a greatest one. */
    public Optional<Integer> wholeNumber(String column, int most) throws CellRefused {
        Optional<BigDecimal> number = number(column);
        if (number.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal value = number.get().stripTrailingZeros();
        if (value.scale() > 0 || value.signum() < 0 || value.compareTo(BigDecimal.valueOf(most)) > 0) {
            throw new CellRefused(
                    column, number.get().toPlainString() + " is not a whole number from 0 to " + most + "; give one");
        }
        return Optional.of(value.intValueExact());
    }

    public Optional<LocalDateTime> moment(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> fault = MomentText.fault(cell.get(), context.facts().timezone());
        if (fault.isPresent()) {
            throw new CellRefused(column, fault.get());
        }
        return MomentText.parse(cell.get(), context.facts().timezone());
    }

    public Optional<PartialDate> date(String column) throws CellRefused {
        Optional<String> cell = raw(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<PartialDate> date = PartialDate.parse(cell.get());
        if (date.isEmpty()) {
            throw new CellRefused(
                    column,
                    Quoted.of(cell.get())
                            + " is not a date that exists; write a day 1971-04-12, a month 1971-04 or a year 1971");
        }
        return date;
    }

    /** The point of the columns view, x and y: all three or none. */
    public Optional<ViewPoint> point() throws CellRefused {
        Optional<View> view = word("view", View.class);
        OptionalDouble x = fraction("x");
        OptionalDouble y = fraction("y");
        if (view.isEmpty() && x.isEmpty() && y.isEmpty()) {
            return Optional.empty();
        }
        for (String column : new String[] {"view", "x", "y"}) {
            if (raw(column).isEmpty()) {
                throw new CellRefused(column, "view, x and y go together; give " + column + " too, or none of them");
            }
        }
        return Optional.of(new ViewPoint(view.orElseThrow(), x.orElseThrow(), y.orElseThrow()));
    }

    private OptionalDouble fraction(String column) throws CellRefused {
        Optional<BigDecimal> number = number(column);
        if (number.isPresent() && (number.get().signum() < 0 || number.get().compareTo(BigDecimal.ONE) > 0)) {
            throw new CellRefused(
                    column,
                    number.get().toPlainString() + " lies outside the view; " + column
                            + " is a fraction from 0 to 1 of the view, from its top left corner");
        }
        return number.map(value -> OptionalDouble.of(value.doubleValue())).orElse(OptionalDouble.empty());
    }
}
