package quarterlight.visit.row;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/**
 * What undo calls an edit of rows: {@code add pin DSC_0231 to front door, left}, {@code remove pin DSC_0231 to hood and 3 more}.
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
    public static String quoted(String sentence) {
        String words = sentence.strip();
        int last = words.offsetByCodePoints(0, Math.min(MAX_QUOTED, words.codePointCount(0, words.length())));
        return "\"" + words.substring(0, last) + (last < words.length() ? "\u2026" : "") + "\"";
    }

    /** The first of some rows by its words, and how many more there are. */
    public String named(List<T> rows, Words words) {
        String first = name.apply(rows.get(0), words);
        return rows.size() == 1 ? first : first + " and " + (rows.size() - 1) + " more";
    }

    public String ofAdding(List<T> rows, Words words) {
        return String.format(added, named(rows, words));
    }

    public String ofChanging(List<T> rows, Words words) {
        return String.format(changed, named(rows, words));
    }

    public String ofRemoving(List<T> rows, Words words) {
        return String.format(removed, named(rows, words));
    }
}
