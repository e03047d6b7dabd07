package quarterlight.table.drawn;

import java.util.List;
import quarterlight.visit.photo.Photo;

/**
 * All outlines and notes of a visit, with the photos that bear them.
 *
 * @param car what the car is called
 * @param photos in the order of the visit
 */
public record Drawings(String car, List<Photo> photos, List<DrawnRow> rows) {
    public Drawings {
        photos = List.copyOf(photos);
        rows = List.copyOf(rows);
    }
}
