package quarterlight.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import quarterlight.file.CsvShape;
import quarterlight.visit.PinSubjects;

/** Reads the trade's usual words for what a pin shows, {@code shown.csv}: common practice in our own choice. */
public final class PinSubjectTable {
    private static final CSVFormat FORMAT = CsvShape.withHeader();

    private PinSubjectTable() {}

    /** The words that the program carries. */
    public static PinSubjects load() {
        try (InputStream in = PinSubjectTable.class.getResourceAsStream("shown.csv");
                CSVParser rows = FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return new PinSubjects(
                    rows.stream().map(row -> row.get("shows").strip()).toList());
        } catch (IOException e) {
            throw new UncheckedIOException("shown.csv cannot be read", e);
        }
    }
}
