package quarterlight.table.list;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import quarterlight.file.PlainFile;
import quarterlight.table.TableUnreadable;
import quarterlight.table.text.FormulaCell;
import quarterlight.table.text.Quoted;
import quarterlight.units.Worded;

/** The lists that the program carries and of which the user may keep one's own in the folder of settings, as CSV. */
public enum UserList implements Worded {
    /** What a visit must bring; one's own takes the place of ours. */
    COVERAGE("coverage.csv", 2),
    /** The order of a walk round the car; one's own takes the place of ours. */
    WALK("coverage-walk.csv", 1),
    /** The functions worth trying; one's own takes the place of ours. */
    TRIALS("trials.csv", 2),
    /** What date codes are read by; one's own are read beside ours. */
    PATTERNS("date-patterns.csv", 2);

    private static final int MAX_ROWS = 2000;
    private static final int MAX_BYTES = 8 << 20;

    private final String file;
    private final int required;

    /** @param required how many of the columns must stand there, the first ones */
    UserList(String file, int required) {
        this.file = file;
        this.required = required;
    }

    /** Its name in the folder of settings. */
    public String file() {
        return file;
    }

    public List<String> columns() {
        return switch (this) {
            case COVERAGE -> CoverageTable.COLUMNS;
            case WALK -> List.of("zone");
            case TRIALS -> TrialTable.COLUMNS;
            case PATTERNS -> DatePatternTable.COLUMNS;
        };
    }

    private void readAll(List<ListRow> rows) {
        switch (this) {
            case COVERAGE -> CoverageTable.rules(rows);
            case WALK -> CoverageTable.walk(rows);
            case TRIALS -> TrialTable.list(rows);
            case PATTERNS -> DatePatternTable.patterns(rows);
        }
    }

    /** The rows that the program carries. */
    public List<ListRow> shipped() {
        try (InputStream in = UserList.class.getResourceAsStream(file)) {
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
    }

    /**
     * The rows of one's own list in a folder if it is there, else those that the program carries.
     *
     * @throws TableUnreadable if one's own cannot be used; the message says the line and what to do
     */
    public List<ListRow> inUse(Path settings) throws TableUnreadable {
        Path own = settings.resolve(file);
        return Files.exists(own) ? read(own) : shipped();
    }

    /** @throws TableUnreadable if the file is no such list; the message says the line and what to do */
    public List<ListRow> read(Path own) throws TableUnreadable {
        try {
            List<ListRow> rows = parse(PlainFile.text(own, MAX_BYTES));
            check(rows);
            return rows;
        } catch (IllegalArgumentException e) {
            throw new TableUnreadable(own, e.getMessage());
        } catch (PlainFile.Unsuitable e) {
            throw new TableUnreadable(own, e.getReason());
        } catch (IOException | UncheckedIOException e) {
            throw new TableUnreadable(own, say("cell.list.utf8"));
        }
    }

    /** @throws IllegalArgumentException if the rows are no such list; the message says the line, the column and what was expected */
    public void check(List<ListRow> rows) {
        if (rows.isEmpty()) {
            throw new IllegalArgumentException(say("cell.list.no-row", offered()));
        }
        readAll(rows);
    }

    /** Rows of cells in the order of the columns, as text of a file. */
    public String text(List<List<String>> rows) {
        StringBuilder out = new StringBuilder();
        out.append(CSVFormat.DEFAULT.format(columns().toArray())).append('\n');
        rows.forEach(row -> out.append(CSVFormat.DEFAULT.format(
                        row.stream().map(FormulaCell::guarded).toArray()))
                .append('\n'));
        return out.toString();
    }

    /** The cells of rows in the order of the columns. */
    public List<List<String>> cells(List<ListRow> rows) {
        return rows.stream()
                .map(row -> columns().stream().map(row::cell).toList())
                .toList();
    }

    /**
     * The rows of a text: a header, then rows between commas, semicolons or tabs.
     *
     * @throws IllegalArgumentException if a column is unknown or lacking, or a row has more cells than the header
     */
    public List<ListRow> parse(String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        String head = plain.lines().findFirst().orElse("");
        List<ListRow> rows = new ArrayList<>();
        try {
            List<String> header = List.of();
            for (CSVRecord record : CSVFormat.DEFAULT
                    .builder()
                    .setDelimiter(delimiter(head))
                    .setIgnoreEmptyLines(true)
                    .get()
                    .parse(new java.io.StringReader(plain))) {
                if (header.isEmpty()) {
                    header = header(record);
                } else if (record.stream().anyMatch(cell -> !cell.isBlank())) {
                    rows.add(row(header, record, rows.size() + 2L));
                }
            }
        } catch (IOException | UncheckedIOException e) {
            throw new IllegalArgumentException("is no table: " + e.getMessage(), e);
        }
        if (rows.size() > MAX_ROWS) {
            throw new IllegalArgumentException("has " + rows.size() + " rows; keep it within " + MAX_ROWS);
        }
        return List.copyOf(rows);
    }

    private static char delimiter(String head) {
        char best = ',';
        for (char sign : new char[] {';', '\t'}) {
            best = count(head, sign) > count(head, best) ? sign : best;
        }
        return best;
    }

    private static long count(String line, char sign) {
        return line.chars().filter(c -> c == sign).count();
    }

    private List<String> header(CSVRecord record) {
        List<String> header = record.stream()
                .map(cell -> cell.strip().toLowerCase(Locale.ROOT))
                .toList();
        for (String name : header) {
            if (!columns().contains(name)) {
                throw new IllegalArgumentException("line 1: there is no column " + Quoted.of(name) + "; " + offered());
            }
        }
        List<String> lacking = columns().subList(0, required).stream()
                .filter(name -> !header.contains(name))
                .toList();
        if (!lacking.isEmpty() || header.stream().distinct().count() != header.size()) {
            throw new IllegalArgumentException(
                    lacking.isEmpty()
                            ? say("cell.list.column-twice", offered())
                            : say("cell.list.lacks", String.join(", ", lacking), offered()));
        }
        return header;
    }

    private static ListRow row(List<String> header, CSVRecord record, long line) {
        if (record.size() > header.size()) {
            throw new IllegalArgumentException(say("cell.list.width", line, record.size(), header.size()));
        }
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < record.size(); i++) {
            cells.put(header.get(i), FormulaCell.plain(record.get(i)).strip());
        }
        return new ListRow(line, cells);
    }

    private String offered() {
        List<String> optional = columns().subList(required, columns().size());
        return optional.isEmpty()
                ? say("cell.list.columns", String.join(", ", columns().subList(0, required)))
                : say(
                        "cell.list.columns.optional",
                        String.join(", ", columns().subList(0, required)),
                        String.join(", ", optional));
    }
}
