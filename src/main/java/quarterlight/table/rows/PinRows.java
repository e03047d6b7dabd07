package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

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
import quarterlight.visit.Photo;
import quarterlight.visit.Pin;

/** Pins: a photo, or a moment {@code at} of a film, on a zone. */
public final class PinRows implements RowKind<Pin> {
    @Override
    public String word() {
        return "pins";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("photo"),
                required("zone"),
                optional("at"),
                optional("view"),
                optional("x"),
                optional("y"),
                optional("shows"),
                optional("caption"),
                optional("mark"));
    }

    @Override
    public Pin value(Cells cells) throws CellRefused {
        Photo photo = need("photo", cells.photo("photo"));
        return new Pin(
                photo.id(),
                need("zone", cells.zone("zone")),
                moment(cells, photo),
                cells.point(),
                cells.text("shows"),
                cells.text("caption"),
                cells.text("mark"));
    }

    private static OptionalDouble moment(Cells cells, Photo photo) throws CellRefused {
        return FilmMoment.read(cells, Optional.of(photo))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    @Override
    public Map<String, String> cells(Pin pin, RowContext context) {
        return new Row(context)
                .photo(Optional.of(pin.photo()))
                .put("zone", pin.zone())
                .put(
                        "at",
                        pin.at().isPresent()
                                ? Optional.of(NumberText.of(pin.at().getAsDouble()))
                                : Optional.empty())
                .point(pin.point())
                .put("shows", pin.shows())
                .put("caption", pin.caption())
                .put("mark", pin.mark())
                .cells();
    }
}
