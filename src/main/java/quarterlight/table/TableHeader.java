package quarterlight.table;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.table.TableText.Unreadable;
import quarterlight.table.text.Nearest;
import quarterlight.table.text.Quoted;
import quarterlight.visit.row.Column;

/** The header of a table: which sign stands between its columns, and which columns it names in which order. */
final class TableHeader {
    private static final char[] DELIMITERS = {',', ';', '\t'};

    private TableHeader() {}

    /** The delimiter that splits the line into the most columns of the kind; comma if none does. */
    static char delimiterOf(String headerLine, RowKind<?> kind) {
        Set<String> known = names(kind);
        char best = ',';
        long most = 0;
        for (char delimiter : DELIMITERS) {
            Set<String> found = new HashSet<>();
            for (String cell : headerLine.split(String.valueOf(delimiter), -1)) {
                found.add(tidy(cell.replace("\"", "")));
            }
            found.retainAll(known);
            if (found.size() > most || found.size() == most && count(headerLine, delimiter) > count(headerLine, best)) {
                best = delimiter;
                most = found.size();
            }
        }
        return best;
    }

    private static long count(String line, char sign) {
        return line.chars().filter(c -> c == sign).count();
    }

    /** @throws Unreadable if a column is unknown, stands twice, is nameless, or a required one is missing */
    static List<String> columns(List<String> cells, int line, RowKind<?> kind) throws Unreadable {
        Set<String> known = names(kind);
        List<String> columns = new ArrayList<>();
        for (String cell : cells) {
            String name = tidy(cell);
            if (name.isEmpty()) {
                throw new Unreadable(line, say("cell.header.nameless", (columns.size() + 1), offered(kind)));
            }
            if (!known.contains(name)) {
                throw new Unreadable(
                        line,
                        name,
                        say(
                                "cell.header.unknown",
                                kind.word(),
                                Quoted.of(name),
                                suggestion(name, known),
                                offered(kind)));
            }
            if (columns.contains(name)) {
                throw new Unreadable(line, name, say("cell.header.twice", name));
            }
            columns.add(name);
        }
        List<String> missing = kind.columns().stream()
                .filter(column -> column.required() && !columns.contains(column.name()))
                .map(Column::name)
                .toList();
        if (!missing.isEmpty()) {
            throw new Unreadable(
                    line, missing.get(0), say("cell.header.lacks", String.join(", ", missing), offered(kind)));
        }
        return columns;
    }

    private static String suggestion(String name, Set<String> known) {
        return Nearest.of(name, known.stream().sorted().toList())
                .filter(near -> near.charAt(0) == name.charAt(0))
                .map(near -> " (" + near + "?)")
                .orElse("");
    }

    private static String offered(RowKind<?> kind) {
        String required = kind.columns().stream()
                .filter(Column::required)
                .map(Column::name)
                .collect(Collectors.joining(", "));
        String optional = kind.columns().stream()
                .filter(column -> !column.required() && !column.older())
                .map(Column::name)
                .collect(Collectors.joining(", "));
        return optional.isEmpty()
                ? say("cell.header.columns", required)
                : say("cell.header.columns.optional", required, optional);
    }

    private static Set<String> names(RowKind<?> kind) {
        return kind.columns().stream().map(Column::name).collect(Collectors.toSet());
    }

    private static String tidy(String cell) {
        return cell.replace('\u00a0', ' ').strip().toLowerCase(Locale.ROOT);
    }
}
