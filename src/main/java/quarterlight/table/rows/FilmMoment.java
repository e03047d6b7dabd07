package quarterlight.table.rows;

import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.NumberText;
import quarterlight.visit.MediaKind;
import quarterlight.visit.Photo;

/** The column {@code at}: seconds into the film of the same row. */
final class FilmMoment {
    static final String COLUMN = "at";

    private FilmMoment() {}

    /** @throws CellRefused if there is a moment and no film, or a moment beyond the film's end */
    static Optional<Double> read(Cells cells, Optional<Photo> photo) throws CellRefused {
        OptionalDouble at = cells.notNegative(COLUMN);
        if (at.isEmpty()) {
            return Optional.empty();
        }
        if (photo.isEmpty()) {
            throw new CellRefused(
                    COLUMN, "a moment is given and no film; name the film under photo, or leave at empty");
        }
        if (photo.get().file().kind() == MediaKind.PHOTO) {
            throw new CellRefused(COLUMN, photo.get().file().name() + " is a photo and has no moments; leave at empty");
        }
        OptionalDouble length = photo.get().file().seconds();
        if (length.isPresent() && at.getAsDouble() > length.getAsDouble()) {
            throw new CellRefused(
                    COLUMN,
                    "the film " + photo.get().file().name() + " is " + NumberText.of(length.getAsDouble())
                            + " s long; give a moment within it");
        }
        return Optional.of(at.getAsDouble());
    }

    static Optional<String> text(Optional<Double> seconds) {
        return seconds.map(NumberText::of);
    }
}
