package quarterlight.photo;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Assumptions;

/** The folder of public sample photos beside the project, and what another program reads in them. */
public final class RealPhotos {
    private RealPhotos() {}

    /** The folder; the test is skipped where it is absent. */
    public static Path folder() {
        Path folder = Path.of(System.getProperty("quarterlight.basedir", "."))
                .resolve("../shared/real-photos")
                .normalize();
        Assumptions.assumeTrue(Files.isDirectory(folder), "the sample photos are not beside the project");
        return folder;
    }

    public static List<CSVRecord> expected() throws IOException {
        return rows(new InputStreamReader(
                Objects.requireNonNull(RealPhotos.class.getResourceAsStream("expected.csv")), StandardCharsets.UTF_8));
    }

    /** All columns, among them the cameras' names. */
    public static List<CSVRecord> expectedInFull() throws IOException {
        return rows(Files.newBufferedReader(folder().resolve("expected.csv")));
    }

    public static List<Path> files(String type) throws IOException {
        try (Stream<CSVRecord> rows = expected().stream()) {
            return rows.filter(row -> row.get("file_type").equals(type))
                    .map(row -> folder().resolve(row.get("path")))
                    .toList();
        }
    }

    private static List<CSVRecord> rows(Reader reader) throws IOException {
        try (CSVParser parser = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(reader)) {
            return parser.getRecords();
        }
    }
}
