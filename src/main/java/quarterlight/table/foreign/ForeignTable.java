package quarterlight.table.foreign;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import quarterlight.file.CsvShape;
import quarterlight.table.TableSource;
import quarterlight.table.TableText;
import quarterlight.table.TableText.Unreadable;
import quarterlight.table.TableUnreadable;
import quarterlight.table.WideTable;
import quarterlight.table.text.FormulaCell;

/**
 * A table that some other program wrote, as it stands: its rows as text, before anything is known of its columns. Delimiter, lines before
 * the header and the lack of a header are told by the shape of the rows.
 *
 * @param file name of the file, for messages
 * @param delimiter what stands between its columns
 * @param columns names of the columns as the file writes them; {@code column 1} and so on where it has none
 * @param rows the rows below the header that have as many cells
 * @param odd lines whose number of cells is another
 */
public record ForeignTable(String file, char delimiter, List<String> columns, List<Line> rows, List<Integer> odd) {
    private static final char[] DELIMITERS = {';', '\t', ','};
    private static final int LINES_TO_JUDGE = 50;
    private static final String NUMBER = "[+-]?\\d+([.,]\\d+)?\\s*\\p{L}{0,4}";

    /** One row, and the line it begins on. */
    public record Line(int number, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }
    }

    public ForeignTable {
        Objects.requireNonNull(file, "file");
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        odd = List.copyOf(odd);
    }

    /** @throws TableUnreadable if the file cannot be read, is no text, or holds no table */
    public static ForeignTable read(Path file) throws TableUnreadable {
        return read(file, Optional.empty());
    }

    /** @param sheet of a workbook, where several hold something */
    public static ForeignTable read(Path file, Optional<String> sheet) throws TableUnreadable {
        try {
            return of(
                    String.valueOf(file.getFileName()),
                    text(TableSource.of(file, sheet).bytes()));
        } catch (Unreadable e) {
            throw new TableUnreadable(file, say("cell.file.no-table", e.getMessage()));
        }
    }

    /** UTF-8; else UTF-16 by its mark; else the eight-bit letters of older western programs. */
    private static String text(byte[] bytes) throws Unreadable {
        boolean little = bytes.length > 1 && (bytes[0] & 0xFF) == 0xFF && (bytes[1] & 0xFF) == 0xFE;
        boolean big = bytes.length > 1 && (bytes[0] & 0xFF) == 0xFE && (bytes[1] & 0xFF) == 0xFF;
        if (little || big) {
            Charset utf16 = little ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
            return new String(bytes, 2, bytes.length - 2, utf16);
        }
        try {
            return TableText.of(bytes);
        } catch (Unreadable e) {
            boolean zero = IntStream.range(0, bytes.length).anyMatch(i -> bytes[i] == 0);
            boolean packed = bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K';
            if (zero || packed) {
                throw e;
            }
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }

    static ForeignTable of(String file, String text) throws Unreadable {
        char delimiter = delimiterOf(text);
        List<Line> lines = lines(text, delimiter);
        int width = usualWidth(lines).orElseThrow(() -> new Unreadable(1, say("cell.file.bare")));
        int first = IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).cells().size() == width)
                .findFirst()
                .orElseThrow();
        boolean header = isHeader(lines.get(first).cells());
        List<String> columns = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            String name = header ? lines.get(first).cells().get(i).strip() : "";
            boolean usable = !name.isEmpty() && !columns.contains(name);
            columns.add(usable ? name : say("cell.column", i + 1));
        }
        List<Line> rows = new ArrayList<>();
        List<Integer> odd = new ArrayList<>();
        for (Line line : lines.subList(first + (header ? 1 : 0), lines.size())) {
            if (line.cells().size() == width) {
                rows.add(line);
            } else {
                odd.add(line.number());
            }
        }
        if (rows.isEmpty()) {
            throw new Unreadable(1, say("cell.file.header-only"));
        }
        Optional<WideTable> unfolded = WideTable.of(columns);
        if (unfolded.isPresent()) {
            rows = rows.stream()
                    .flatMap(row ->
                            unfolded.get().rows(row.cells()).stream().map(cells -> new Line(row.number(), cells)))
                    .toList();
            columns = unfolded.get().header(columns);
        }
        return new ForeignTable(file, delimiter, columns, rows, odd);
    }

    /** The place of a column by its name, however it is capitalized. */
    public OptionalInt place(String column) {
        String wanted = tidy(column);
        return IntStream.range(0, columns.size())
                .filter(i -> tidy(columns.get(i)).equals(wanted))
                .findFirst();
    }

    /** A column name without what two exports of one gauge may differ in: capitals and outer blanks. */
    public static String tidy(String name) {
        return name.replace('\u00a0', ' ').strip().toLowerCase(Locale.ROOT);
    }

    /** The sign that cuts most of the first lines into the same number of cells, above one; comma if none does. */
    private static char delimiterOf(String text) {
        char best = ',';
        long most = 0;
        for (char delimiter : DELIMITERS) {
            List<Long> counts = text.lines()
                    .filter(line -> !line.isBlank())
                    .limit(LINES_TO_JUDGE)
                    .map(line -> outsideQuotes(line, delimiter))
                    .toList();
            long alike = counts.stream()
                    .filter(count -> count > 0)
                    .mapToLong(count -> counts.stream().filter(count::equals).count())
                    .max()
                    .orElse(0);
            if (alike > most) {
                best = delimiter;
                most = alike;
            }
        }
        return best;
    }

    private static long outsideQuotes(String line, char sign) {
        long count = 0;
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            quoted ^= c == '"';
            count += c == sign && !quoted ? 1 : 0;
        }
        return count;
    }

    private static List<Line> lines(String text, char delimiter) throws Unreadable {
        CSVFormat format = CsvShape.withEveryLine(delimiter);
        List<Line> lines = new ArrayList<>();
        int number = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                List<String> cells =
                        records.next().stream().map(FormulaCell::plain).toList();
                if (!cells.stream().allMatch(String::isBlank)) {
                    lines.add(new Line(number, cells));
                }
                number = (int) parser.getCurrentLineNumber() + 1;
            }
        } catch (UncheckedIOException | IOException e) {
            throw new Unreadable(number, say("cell.file.quote", number));
        }
        return lines;
    }

    /** The number of cells that most rows have; of equally many the larger, since titles above a table are narrow. */
    private static OptionalInt usualWidth(List<Line> lines) {
        return lines.stream()
                .mapToInt(line -> line.cells().size())
                .boxed()
                .max((a, b) -> {
                    int common = Long.compare(count(lines, a), count(lines, b));
                    return common != 0 ? common : Integer.compare(a, b);
                })
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    private static long count(List<Line> lines, int width) {
        return lines.stream().filter(line -> line.cells().size() == width).count();
    }

    /** A header names things: no cell of it is a number, save those that number readings from 1 up. */
    private static boolean isHeader(List<String> cells) {
        return WideTable.of(cells).isPresent() && !cells.get(0).strip().matches(NUMBER)
                || cells.stream().noneMatch(cell -> cell.strip().matches(NUMBER));
    }
}
