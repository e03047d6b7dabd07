package quarterlight.store.library;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * A visit as the index knows it.
 *
 * @param folder absolute
 * @param stamp changes when its database changes
 * @param photos how many files were taken in
 * @param picture of the car, if there is one
 */
public record LibraryVisit(
        Path folder,
        String stamp,
        String car,
        Optional<String> date,
        Optional<String> client,
        Optional<String> place,
        int photos,
        Optional<LibraryPicture> picture) {
    public LibraryVisit {
        Objects.requireNonNull(folder, "folder");
        Objects.requireNonNull(stamp, "stamp");
        Objects.requireNonNull(car, "car");
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(client, "client");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(picture, "picture");
    }
}
