package quarterlight.table.list;

import static quarterlight.language.Sentences.say;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import quarterlight.table.text.Quoted;
import quarterlight.units.Worded;

/**
 * One row of a list of the program or of the user's own, by column.
 *
 * @param line its line in the text, the header being line 1
 * @param cells by column, without outer blanks; a column that the text lacks is a blank cell
 */
public record ListRow(long line, Map<String, String> cells) {
    public ListRow {
        cells = Map.copyOf(cells);
    }

    /** What stands in a column; empty if nothing does. */
    public String cell(String column) {
        return cells.getOrDefault(column, "");
    }

    /** @throws IllegalArgumentException if the cell is blank */
    String required(String column) {
        if (cell(column).isEmpty()) {
            throw refused(column, say("cell.empty", column));
        }
        return cell(column);
    }

    /** @throws IllegalArgumentException if the cell holds anything but yes, no or nothing */
    boolean yes(String column) {
        String cell = cell(column);
        if (!cell.isEmpty() && !cell.equals("yes") && !cell.equals("no")) {
            throw refused(column, say("cell.yes-no", Quoted.of(cell)));
        }
        return cell.equals("yes");
    }

    /** @throws IllegalArgumentException if the cell is no whole number within the range */
    int number(String column, int least, int most) {
        String cell = required(column);
        if (!cell.matches("[0-9]{1,6}") || Integer.parseInt(cell) < least || Integer.parseInt(cell) > most) {
            throw refused(column, say("cell.list.whole", Quoted.of(cell), least, most));
        }
        return Integer.parseInt(cell);
    }

    /** @throws IllegalArgumentException if the cell is none of the words of the type */
    <E extends Enum<E> & Worded> E word(String column, Class<E> type) {
        return word(column, type, required(column));
    }

    /** Words between blanks. */
    <E extends Enum<E> & Worded> Set<E> words(String column, Class<E> type) {
        return set(column, word -> word(column, type, word));
    }

    private <E extends Enum<E> & Worded> E word(String column, Class<E> type, String word) {
        return Worded.find(type, word)
                .orElseThrow(() -> refused(column, say("cell.none-of", Quoted.of(word), Worded.words(type))));
    }

    /** What stands between the blanks of a cell. */
    <T> Set<T> set(String column, Function<String, T> read) {
        Set<T> found = new LinkedHashSet<>();
        Arrays.stream(cell(column).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .forEach(word -> found.add(read.apply(word)));
        return found;
    }

    IllegalArgumentException refused(String column, String reason) {
        return new IllegalArgumentException("line " + line + ", column " + column + ": " + reason);
    }
}
