package quarterlight.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A table with several readings in a row ({@code zone, 1, 2, 3}) as one with a reading in each row: the numbered columns become one, called
 * {@code value}; empty cells are no readings.
 */
public final class WideTable {
    private static final Pattern NUMBERED = Pattern.compile("(?:reading|value|spot|no\\.?|#|r|v|m)?\\s*#?(\\d{1,2})");
    private static final String VALUE = "value";

    private final List<Integer> numbered;
    private final List<Integer> others;

    private WideTable(List<Integer> numbered, List<Integer> others) {
        this.numbered = numbered;
        this.others = others;
    }

    /** How to unfold a table of this header; empty if its columns are not numbered from 1 up, two or more, or it has a value column. */
    public static Optional<WideTable> of(List<String> header) {
        List<Integer> places = IntStream.range(0, header.size())
                .filter(i -> number(header.get(i)).isPresent())
                .boxed()
                .sorted(Comparator.comparing(i -> number(header.get(i)).orElseThrow()))
                .toList();
        boolean inOrder = IntStream.range(0, places.size())
                .allMatch(i -> number(header.get(places.get(i))).orElseThrow() == i + 1);
        boolean hasValue = header.stream().anyMatch(name -> tidy(name).equals(VALUE));
        boolean named = places.size() < header.size();
        return places.size() < 2 || !inOrder || hasValue || !named
                ? Optional.empty()
                : Optional.of(new WideTable(
                        places,
                        IntStream.range(0, header.size())
                                .filter(i -> !places.contains(i))
                                .boxed()
                                .toList()));
    }

    private static Optional<Integer> number(String name) {
        Matcher matcher = NUMBERED.matcher(tidy(name));
        return matcher.matches() ? Optional.of(Integer.valueOf(matcher.group(1))) : Optional.empty();
    }

    private static String tidy(String name) {
        return name.replace('\u00a0', ' ').strip().toLowerCase(Locale.ROOT);
    }

    public List<String> header(List<String> header) {
        List<String> columns = new ArrayList<>();
        others.forEach(i -> columns.add(header.get(i)));
        columns.add(VALUE);
        return columns;
    }

    /** A row for each reading; for a row without any, one whose value is empty, so that it is not lost unsaid. */
    public List<List<String>> rows(List<String> row) {
        List<List<String>> rows = new ArrayList<>();
        for (int place : numbered) {
            if (!row.get(place).isBlank()) {
                rows.add(with(row, row.get(place)));
            }
        }
        return rows.isEmpty() ? List.of(with(row, "")) : rows;
    }

    private List<String> with(List<String> row, String value) {
        List<String> cells = new ArrayList<>();
        others.forEach(i -> cells.add(row.get(i)));
        cells.add(value);
        return cells;
    }
}
