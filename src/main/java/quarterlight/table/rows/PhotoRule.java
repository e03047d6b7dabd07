package quarterlight.table.rows;

import java.util.Optional;
import quarterlight.table.cell.CellRefused;
import quarterlight.visit.PhotoFile;

/** What something drawn on a photo must keep to; the geometry of photos knows it, the caller passes it in. */
@FunctionalInterface
public interface PhotoRule<T> {
    /** The cell at fault and why, or empty if it can be drawn on the photo. */
    Optional<CellRefused> problem(T drawn, PhotoFile photo);

    /** The value, if the rule takes it. */
    default T checked(T drawn, PhotoFile photo) throws CellRefused {
        Optional<CellRefused> problem = problem(drawn, photo);
        if (problem.isPresent()) {
            throw problem.get();
        }
        return drawn;
    }
}
