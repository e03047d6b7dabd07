package quarterlight.table;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import quarterlight.file.CsvShape;
import quarterlight.table.TableText.Unreadable;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.RowContext;
import quarterlight.table.text.Decimals;
import quarterlight.table.text.FormulaCell;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.RecordKind;

/**
 * Reads a table of one kind from a CSV file (RFC 4180, with comma, semicolon or tab): every row becomes a value or is refused
 * with its line, column and reason. The header is required, its columns may stand in any order. Blank lines count for nothing.
 */
public final class CsvFile {
    private CsvFile() {}

    /** @throws TableUnreadable if the file is not there, is no file, may not be read or is too large */
    public static <T> TableRead<T> read(Path file, RowKind<T> kind, RowContext context) throws TableUnreadable {
        return read(TableSource.of(file), kind, context);
    }

    /** Reads a table that was fetched already. */
    public static <T> TableRead<T> read(TableSource source, RowKind<T> kind, RowContext context) {
        return read(source.name(), source.bytes(kind.word()), kind, context);
    }

    /** Reads a table from the bytes of a file. */
    static <T> TableRead<T> read(String name, byte[] bytes, RowKind<T> kind, RowContext context) {
        try {
            return new Reading<>(name, TableText.of(bytes), kind, context).run();
        } catch (Unreadable e) {
            return TableRead.unusable(name, e.refused());
        }
    }

    private static final class Reading<T> {
        private final String name;
        private final String text;
        private final RowKind<T> kind;
        private final RowContext context;
        private final char delimiter;
        private final List<TableRead.Row<T>> rows = new ArrayList<>();
        private final List<TableRead.Refused> refused = new ArrayList<>();
        private List<String> header = List.of();
        /** How rows with several readings are taken apart, if they hold several. */
        private Optional<WideTable> unfolded = Optional.empty();

        private int width;

        Reading(String name, String text, RowKind<T> kind, RowContext context) {
            this.name = name;
            this.text = text;
            this.kind = kind;
            this.context = context;
            String first =
                    text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
            this.delimiter = TableHeader.delimiterOf(first, kind);
        }

        TableRead<T> run() throws Unreadable {
            CSVFormat format = CsvShape.withEveryLine(delimiter);
            List<Line> lines = new ArrayList<>();
            int line = 1;
            try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
                Iterator<CSVRecord> records = parser.iterator();
                while (records.hasNext()) {
                    List<String> cells = records.next().toList();
                    if (header.isEmpty()) {
                        takeHeader(cells, line);
                    } else {
                        lines.add(new Line(line, cells));
                    }
                    line = (int) parser.getCurrentLineNumber() + 1;
                }
            } catch (UncheckedIOException | IOException e) {
                throw new Unreadable(line, say("cell.row.quote"));
            }
            Decimals decimals = Decimals.of(
                    delimiter != ',', lines.stream().map(Line::cells).toList());
            lines.forEach(each -> take(each.cells(), each.number(), decimals));
            if (header.isEmpty()) {
                throw new Unreadable(1, say("cell.file.empty"));
            }
            if (rows.isEmpty() && refused.isEmpty()) {
                throw new Unreadable(1, say("cell.file.no-rows"));
            }
            return new TableRead<>(name, true, rows, refused);
        }

        private record Line(int number, List<String> cells) {}

        private void takeHeader(List<String> cells, int line) throws Unreadable {
            if (!cells.stream().allMatch(String::isBlank)) {
                width = cells.size();
                unfolded = kind.kind().equals(RecordKind.READINGS) ? WideTable.of(cells) : Optional.empty();
                header = TableHeader.columns(
                        unfolded.map(one -> one.header(cells)).orElse(cells), line, kind);
            }
        }

        private void take(List<String> row, int line, Decimals decimals) {
            if (row.stream().allMatch(String::isBlank)) {
                return;
            }
            if (row.size() != width) {
                refused.add(new TableRead.Refused(
                        line,
                        Optional.empty(),
                        say(
                                "cell.row.width",
                                row.size(),
                                width,
                                delimiter == '\t' ? say("cell.row.tab") : "\"" + delimiter + "\"")));
                return;
            }
            for (List<String> single : unfolded.map(one -> one.rows(row)).orElse(List.of(row))) {
                takeSingle(single, line, decimals);
            }
        }

        private void takeSingle(List<String> row, int line, Decimals decimals) {
            Map<String, String> cells = new HashMap<>();
            for (int i = 0; i < row.size(); i++) {
                cells.put(header.get(i), FormulaCell.plain(row.get(i)));
            }
            try {
                rows.add(new TableRead.Row<>(line, kind.value(new Cells(cells, decimals, context))));
            } catch (CellRefused e) {
                refused.add(new TableRead.Refused(line, e.column(), e.reason()));
            }
        }
    }
}
