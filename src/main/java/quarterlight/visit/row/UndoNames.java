package quarterlight.visit.row;

import static quarterlight.language.Sentences.say;

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
 * @param added the key of the label of adding it, which takes its name
 * @param changed the key of the label of changing it
 * @param removed the key of the label of removing it
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
            return zone.map(on -> say("undo.on", zone(on))).orElse("");
        }
    }

    public UndoNames {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(added, "added");
        Objects.requireNonNull(changed, "changed");
        Objects.requireNonNull(removed, "removed");
    }

    static <T> UndoNames<T> of(BiFunction<T, UndoNames.Words, String> name) {
        return new UndoNames<>(name, "undo.add", "undo.change", "undo.remove");
    }

    /** By nothing but what a row of the kind is called. */
    static <T> UndoNames<T> plain(String kind) {
        return of((row, words) -> "1 " + say("kind.one." + kind));
    }

    /** A sentence in quotes, cut to what a menu has room for. */
    public static String quoted(String sentence) {
        String words = sentence.strip();
        int last = words.offsetByCodePoints(0, Math.min(MAX_QUOTED, words.codePointCount(0, words.length())));
        return say("undo.quoted", words.substring(0, last) + (last < words.length() ? "\u2026" : ""));
    }

    /** The first of some rows by its words, and how many more there are. */
    public String named(List<T> rows, Words words) {
        String first = name.apply(rows.get(0), words);
        return rows.size() == 1 ? first : say("undo.more", first, rows.size() - 1);
    }

    public String ofAdding(List<T> rows, Words words) {
        return say(added, named(rows, words));
    }

    public String ofChanging(List<T> rows, Words words) {
        return say(changed, named(rows, words));
    }

    public String ofRemoving(List<T> rows, Words words) {
        return say(removed, named(rows, words));
    }
}
