package quarterlight.table.cell;

import java.util.List;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;
import quarterlight.visit.row.CellRefused;

/** What may stand where a date pattern is asked for: the name of one at hand, the form of one, or the word for none. */
final class PatternNames {
    private PatternNames() {}

    static void require(String column, String name, DatePatterns known) throws CellRefused {
        if (name.equals(DatePattern.NONE)) {
            return;
        }
        if (name.indexOf('{') >= 0) {
            try {
                new DatePattern(name, name, "", "");
            } catch (IllegalArgumentException e) {
                throw new CellRefused(column, e.getMessage());
            }
        } else if (known.named(name).isEmpty()) {
            List<String> names = known.all().stream().map(DatePattern::name).toList();
            throw new CellRefused(
                    column,
                    "no date pattern is called " + Quoted.of(name) + "; the nearest is "
                            + Nearest.of(name, names).orElse("none") + "; " + DatePattern.NONE
                            + " stands for a number that means no date");
        }
    }
}
