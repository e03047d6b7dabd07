package quarterlight.table.list;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;
import quarterlight.table.TableUnreadable;

/** Reads date patterns: those that the program carries and those of one's own list. */
public final class DatePatternTable {
    static final List<String> COLUMNS = List.of("name", "form", "example", "reading");

    private DatePatternTable() {}

    /** The patterns that the program carries. */
    public static DatePatterns load() {
        return new DatePatterns(patterns(UserList.PATTERNS.shipped()));
    }

    /** The program's patterns and those of one's own list in a folder, if it is there; one of the same name takes the place of ours. */
    public static DatePatterns load(Path settings) throws TableUnreadable {
        Path own = settings.resolve(UserList.PATTERNS.file());
        return Files.exists(own) ? load().with(read(own)) : load();
    }

    /**
     * Reads a list of one's own: {@code name, form}, and if wanted {@code example, reading}.
     *
     * @throws TableUnreadable if a row is no pattern, with its line and the reason
     */
    public static List<DatePattern> read(Path file) throws TableUnreadable {
        return patterns(UserList.PATTERNS.read(file));
    }

    /** @throws IllegalArgumentException if a row is no pattern, or a name stands twice; the message says its line */
    static List<DatePattern> patterns(List<ListRow> rows) {
        List<DatePattern> patterns = new ArrayList<>();
        for (ListRow row : rows) {
            DatePattern pattern = pattern(row);
            if (patterns.stream().anyMatch(known -> known.name().equals(pattern.name()))) {
                throw row.refused("name", "the name '" + pattern.name() + "' stands twice");
            }
            patterns.add(pattern);
        }
        return List.copyOf(patterns);
    }

    private static DatePattern pattern(ListRow row) {
        String name = row.required("name");
        String form = row.required("form");
        try {
            return new DatePattern(name, form, row.cell("example"), row.cell("reading"));
        } catch (IllegalArgumentException e) {
            throw row.refused("form", e.getMessage());
        }
    }
}
