package quarterlight.visit.row;

import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/**
 * What undo calls an edit of one row: {@code add pin DSC_0231 to front door, left}.
 *
 * @param name the row in words
 * @param added the label of adding it, with {@code %s} for its name
 * @param changed the label of changing it
 * @param removed the label of removing it
 */
public record UndoNames<T>(BiFunction<T, UndoNames.Words, String> name, String added, String changed, String removed) {
    /** More of a sentence than this is cut. */
    private static final int MAX_QUOTED = 40;

    /** What photos and zones are called. */
    public interface Words {
        String photo(PhotoId photo);

        String zone(ZoneId zone);

        /** {@code  on hood}, or nothing. */
        default String on(Optional<ZoneId> zone) {
            return zone.map(on -> " on " + zone(on)).orElse("");
        }
    }

    public UndoNames {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(added, "added");
        Objects.requireNonNull(changed, "changed");
        Objects.requireNonNull(removed, "removed");
    }

    static <T> UndoNames<T> of(BiFunction<T, UndoNames.Words, String> name) {
        return new UndoNames<>(name, "add %s", "change %s", "remove %s");
    }

    static <T> UndoNames<T> plain(String name) {
        return of((row, words) -> name);
    }

    /** A sentence in quotes, cut to what a menu has room for. */
    static String quoted(String sentence) {
        String words = sentence.strip();
        int last = words.offsetByCodePoints(0, Math.min(MAX_QUOTED, words.codePointCount(0, words.length())));
        return "\"" + words.substring(0, last) + (last < words.length() ? "\u2026" : "") + "\"";
    }

    public String ofAdding(T row, Words words) {
        return String.format(added, name.apply(row, words));
    }

    public String ofChanging(T row, Words words) {
        return String.format(changed, name.apply(row, words));
    }

    public String ofRemoving(T row, Words words) {
        return String.format(removed, name.apply(row, words));
    }
}
