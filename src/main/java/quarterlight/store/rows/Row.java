package quarterlight.store.rows;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.car.PartialDate;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.ViewPoint;

/** The present row of a result, read by column name. NULL becomes an empty optional here. */
public final class Row {
    private final ResultSet result;

    public Row(ResultSet result) {
        this.result = result;
    }

    RecordId id() throws SQLException {
        return new RecordId(result.getLong("id"));
    }

    /** @throws SQLException also if the cell is NULL */
    public String text(String column) throws SQLException {
        return someText(column).orElseThrow(() -> new SQLException("column " + column + " is empty"));
    }

    Optional<String> someText(String column) throws SQLException {
        return Optional.ofNullable(result.getString(column));
    }

    long integer(String column) throws SQLException {
        return result.getLong(column);
    }

    OptionalInt someInteger(String column) throws SQLException {
        int value = result.getInt(column);
        return result.wasNull() ? OptionalInt.empty() : OptionalInt.of(value);
    }

    double real(String column) throws SQLException {
        return result.getDouble(column);
    }

    OptionalDouble someReal(String column) throws SQLException {
        double value = result.getDouble(column);
        return result.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    Optional<Double> someRealValue(String column) throws SQLException {
        OptionalDouble value = someReal(column);
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    Optional<Boolean> someFlag(String column) throws SQLException {
        OptionalInt value = someInteger(column);
        return value.isPresent() ? Optional.of(value.getAsInt() != 0) : Optional.empty();
    }

    <E extends Enum<E> & Worded> E word(Class<E> type, String column) throws SQLException {
        String word = text(column);
        return Worded.find(type, word)
                .orElseThrow(() -> new SQLException(
                        "column " + column + " holds \"" + word + "\", expected one of " + Worded.words(type)));
    }

    <E extends Enum<E> & Worded> Optional<E> someWord(Class<E> type, String column) throws SQLException {
        return someText(column).isPresent() ? Optional.of(word(type, column)) : Optional.empty();
    }

    ZoneId zone(String column) throws SQLException {
        return new ZoneId(text(column));
    }

    Optional<ZoneId> someZone(String column) throws SQLException {
        return someText(column).map(ZoneId::new);
    }

    PhotoId photo(String column) throws SQLException {
        return new PhotoId(result.getLong(column));
    }

    Optional<PhotoId> somePhoto(String column) throws SQLException {
        long id = result.getLong(column);
        return result.wasNull() ? Optional.empty() : Optional.of(new PhotoId(id));
    }

    /** Numbers of photos between blanks; none if the cell is empty. */
    List<PhotoId> photos(String column) throws SQLException {
        return someText(column).stream()
                .flatMap(text -> Arrays.stream(text.split(" ")))
                .map(id -> new PhotoId(Long.parseLong(id)))
                .toList();
    }

    Optional<LocalDateTime> someTime(String column) throws SQLException {
        return someText(column).map(IsoTime::read);
    }

    BigDecimal decimal(String column) throws SQLException {
        return new BigDecimal(text(column));
    }

    PartialDate date(String column) throws SQLException {
        String text = text(column);
        return PartialDate.parse(text)
                .orElseThrow(() -> new SQLException("column " + column + " holds \"" + text + "\", expected a date"));
    }

    /** The columns view, x, y. */
    Optional<ViewPoint> point() throws SQLException {
        Optional<View> view = someWord(View.class, "view");
        return view.isPresent() ? Optional.of(new ViewPoint(view.get(), real("x"), real("y"))) : Optional.empty();
    }
}
