package quarterlight.store.rows;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;

/** The cells of one row in the order of its columns, on their way into the database. What is absent becomes NULL here. */
public final class RowValues {
    private final List<Object> values = new ArrayList<>();

    /** A text; a NUL in it would end it early in SQL, so it becomes the replacement character. */
    public RowValues text(String text) {
        return value(plain(text));
    }

    static String plain(String text) {
        return text.replace('\0', '\uFFFD');
    }

    /** A cell as the database takes it; NULL if it is null. */
    RowValues value(Object cell) {
        values.add(cell);
        return this;
    }

    /** Anything whose own text form reads back exactly: a time, an offset, a decimal number. */
    public RowValues textOf(Object value) {
        return text(value.toString());
    }

    public RowValues textOf(Optional<?> value) {
        return value.map(this::textOf).orElseGet(this::none);
    }

    RowValues word(Worded word) {
        return text(word.word());
    }

    RowValues word(Optional<? extends Worded> word) {
        return word.map(this::word).orElseGet(this::none);
    }

    RowValues zone(ZoneId zone) {
        return text(zone.value());
    }

    RowValues integer(long value) {
        values.add(value);
        return this;
    }

    RowValues integer(OptionalInt value) {
        return value.isPresent() ? integer(value.getAsInt()) : none();
    }

    RowValues real(double value) {
        values.add(value);
        return this;
    }

    RowValues real(OptionalDouble value) {
        return value.isPresent() ? real(value.getAsDouble()) : none();
    }

    RowValues real(Optional<Double> value) {
        return value.map(number -> real(number.doubleValue())).orElseGet(this::none);
    }

    RowValues flag(boolean value) {
        return integer(value ? 1 : 0);
    }

    RowValues photo(Optional<PhotoId> photo) {
        return photo.map(id -> integer(id.value())).orElseGet(this::none);
    }

    /** Numbers of photos between blanks; NULL for none. */
    RowValues photos(List<PhotoId> photos) {
        return photos.isEmpty()
                ? none()
                : text(photos.stream().map(id -> Long.toString(id.value())).collect(Collectors.joining(" ")));
    }

    /** Three cells: view, x, y. */
    RowValues point(Optional<ViewPoint> point) {
        return point.map(p -> word(p.view()).real(p.x()).real(p.y()))
                .orElseGet(() -> none().none().none());
    }

    RowValues none() {
        values.add(null);
        return this;
    }

    /** The value of a cell; null for NULL. */
    Object at(int index) {
        return values.get(index);
    }

    int size() {
        return values.size();
    }

    public void bind(PreparedStatement statement) throws SQLException {
        for (int i = 0; i < values.size(); i++) {
            statement.setObject(i + 1, values.get(i));
        }
    }
}
