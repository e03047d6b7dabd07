package quarterlight.visit.row;

import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import quarterlight.visit.photo.PhotoId;

/**
 * What undo calls an edit of one row: {@code add pin DSC_0231 to left front door}.
 *
 * @param name the row in words, given the names of photos
 * @param added the label of adding it, with {@code %s} for its name
 * @param changed the label of changing it
 * @param removed the label of removing it
 */
public record UndoNames<T>(
        BiFunction<T, Function<PhotoId, String>, String> name, String added, String changed, String removed) {
    public UndoNames {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(added, "added");
        Objects.requireNonNull(changed, "changed");
        Objects.requireNonNull(removed, "removed");
    }

    static <T> UndoNames<T> of(BiFunction<T, Function<PhotoId, String>, String> name) {
        return new UndoNames<>(name, "add %s", "change %s", "remove %s");
    }

    static <T> UndoNames<T> plain(String name) {
        return of((row, photos) -> name);
    }

    public String ofAdding(T row, Function<PhotoId, String> photos) {
        return String.format(added, name.apply(row, photos));
    }

    public String ofChanging(T row, Function<PhotoId, String> photos) {
        return String.format(changed, name.apply(row, photos));
    }

    public String ofRemoving(T row, Function<PhotoId, String> photos) {
        return String.format(removed, name.apply(row, photos));
    }
}
