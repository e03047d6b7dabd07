package quarterlight.table.cell;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.table.text.NumberText;
import quarterlight.table.text.Quoted;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.row.CellRefused;

/** The cells of a row that name photos, and those that are read against the photo which the row names. */
final class PhotoCells {
    /** Stands between the names of several photos in one cell. */
    static final String BETWEEN = "|";

    /** The column that names the photo of a row. */
    private static final String PHOTO = "photo";

    private final Cells cells;

    PhotoCells(Cells cells) {
        this.cells = cells;
    }

    Optional<Photo> one(String column) throws CellRefused {
        Optional<String> cell = cells.raw(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(find(column, cell.get()));
    }

    private Photo find(String column, String name) throws CellRefused {
        return cells.context().photos().find(column, name);
    }

    Optional<Photo> still(String column) throws CellRefused {
        Optional<Photo> photo = one(column);
        if (photo.isPresent() && photo.get().file().kind() != MediaKind.PHOTO) {
            throw new CellRefused(
                    column,
                    say(
                            "cell.photo.outline",
                            photo.get().file().name(),
                            photo.get().file().kind().said()));
        }
        return photo;
    }

    /** Photos named in one cell, each once, the first one first. */
    List<Photo> several(String column) throws CellRefused {
        List<Photo> found = new ArrayList<>();
        for (String name : cells.raw(column).stream()
                .flatMap(cell -> Arrays.stream(cell.split(Pattern.quote(BETWEEN), -1)))
                .map(String::strip)
                .toList()) {
            if (name.isEmpty()) {
                throw new CellRefused(column, say("cell.photo.empty", BETWEEN));
            }
            Photo photo = find(column, name);
            if (found.contains(photo)) {
                throw new CellRefused(column, say("cell.photo.twice", Quoted.of(name)));
            }
            found.add(photo);
        }
        return List.copyOf(found);
    }

    /** The only zone that the photo of the row is pinned to. */
    Optional<ZoneId> onlyZone(String column) throws CellRefused {
        Optional<Photo> photo = one(PHOTO);
        if (photo.isEmpty()) {
            return Optional.empty();
        }
        String name = photo.get().file().name();
        List<ZoneId> zones = cells.context().pinnedTo(photo.get().id());
        if (zones.isEmpty()) {
            throw new CellRefused(column, say("cell.zone.unpinned", name));
        }
        if (zones.size() > 1) {
            throw new CellRefused(
                    column,
                    say(
                            "cell.zone.several",
                            name,
                            zones.stream().map(ZoneId::value).collect(Collectors.joining(", "))));
        }
        return Optional.of(zones.get(0));
    }

    /**
     * Seconds into the film or sound that the row names first, or a page of the paper.
     *
     * @throws CellRefused if there is a moment and nothing that has one, or a moment beyond its end, or no page of the paper
     */
    Optional<Double> moment(String column) throws CellRefused {
        Optional<Double> at = cells.amount(column);
        if (at.isEmpty()) {
            return at;
        }
        Photo film = several(PHOTO).stream()
                .findFirst()
                .orElseThrow(() -> new CellRefused(column, say("cell.moment.no-film")));
        String name = film.file().name();
        MediaKind kind = film.file().kind();
        OptionalDouble length = film.file().extent();
        if (kind == MediaKind.PAPER) {
            return page(column, at.get(), length, name);
        }
        if (!kind.hasMoments()) {
            throw new CellRefused(column, say("cell.moment.none", name, kind.said()));
        }
        if (length.isPresent() && at.get() > length.getAsDouble()) {
            throw new CellRefused(
                    column, say("cell.moment.beyond", kind.said(), name, NumberText.of(length.getAsDouble())));
        }
        return at;
    }

    private static Optional<Double> page(String column, double page, OptionalDouble pages, String name)
            throws CellRefused {
        if (page < 1 || page != Math.rint(page) || page > pages.orElse(Double.MAX_VALUE)) {
            throw new CellRefused(
                    column,
                    pages.isPresent()
                            ? say("cell.page.to", name, NumberText.of(page), NumberText.of(pages.getAsDouble()))
                            : say("cell.page", name, NumberText.of(page)));
        }
        return Optional.of(page);
    }
}
