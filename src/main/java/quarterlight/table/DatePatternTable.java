package quarterlight.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;

/** Reads date patterns: those that the program carries, {@code date-patterns.csv}, and a file of one's own of the same form. */
public final class DatePatternTable {
    /** Name of one's own list in the folder of settings. */
    public static final String OWN_FILE = "date-patterns.csv";

    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true)
            .get();

    private DatePatternTable() {}

    /** The patterns that the program carries. */
    public static DatePatterns load() {
        try (InputStream in = DatePatternTable.class.getResourceAsStream("date-patterns.csv")) {
            List<DatePattern> rows = new ArrayList<>();
            for (CSVRecord row : FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                rows.add(pattern(row));
            }
            return new DatePatterns(rows);
        } catch (IOException e) {
            throw new UncheckedIOException("date-patterns.csv cannot be read", e);
        }
    }

    /** The program's patterns and those of one's own list in a folder, if it is there; one of the same name takes the place of ours. */
    public static DatePatterns load(Path settings) throws TableUnreadable {
        Path own = settings.resolve(OWN_FILE);
        return Files.exists(own) ? load().with(read(own)) : load();
    }

    /**
     * Reads a list of one's own: {@code name, form}, and if wanted {@code example, reading}.
     *
     * @throws TableUnreadable if a row is no pattern, with its line and the reason
     */
    public static List<DatePattern> read(Path file) throws TableUnreadable {
        List<DatePattern> rows = new ArrayList<>();
        long line = 1;
        try (Reader in = Files.newBufferedReader(file)) {
            for (CSVRecord row : FORMAT.parse(in)) {
                line++;
                DatePattern pattern = pattern(row);
                if (rows.stream().anyMatch(known -> known.name().equals(pattern.name()))) {
                    throw new IllegalArgumentException("the name '" + pattern.name() + "' stands twice");
                }
                rows.add(pattern);
            }
        } catch (IllegalArgumentException e) {
            throw new TableUnreadable(
                    file, "line " + line + ": " + e.getMessage() + "; the columns are name, form, example, reading");
        } catch (IOException | UncheckedIOException e) {
            throw new TableUnreadable(file, "cannot be read; check that it is a UTF-8 text");
        }
        return rows;
    }

    private static DatePattern pattern(CSVRecord row) {
        return new DatePattern(cell(row, "name"), cell(row, "form"), cell(row, "example"), cell(row, "reading"));
    }

    private static String cell(CSVRecord row, String column) {
        return row.isSet(column) ? row.get(column).strip() : "";
    }
}
