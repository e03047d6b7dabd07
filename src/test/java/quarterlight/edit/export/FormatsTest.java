package quarterlight.edit.export;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;

/** What {@code docs/formats.md} says of tables and columns is what is written, no more and no less. */
class FormatsTest {
    private static final Path DOCUMENT =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("docs/formats.md");
    private static final Pattern HEADING = Pattern.compile("### (\\S+)");
    private static final Pattern ROW = Pattern.compile("\\| `(\\w+)` \\| (CSV|JSON|CSV, JSON) \\| (.+) \\|");

    @TempDir
    Path folder;

    /** The documented columns of each table that stand in one of its files. */
    private static Map<String, List<String>> documented(String file) throws Exception {
        Map<String, List<String>> tables = new LinkedHashMap<>();
        String table = "";
        for (String line : Files.readAllLines(DOCUMENT)) {
            Matcher heading = HEADING.matcher(line);
            Matcher row = ROW.matcher(line);
            if (heading.matches()) {
                table = heading.group(1);
                tables.put(table, new ArrayList<>());
            } else if (row.matches() && row.group(2).contains(file)) {
                tables.get(table).add(row.group(1));
            }
        }
        return tables;
    }

    @Test
    void everyColumnIsDocumentedAndEveryDocumentedColumnIsWritten() throws Exception {
        Map<String, List<String>> csv = new LinkedHashMap<>();
        Map<String, List<String>> json = new LinkedHashMap<>();
        try (InputStream in = SampleVisit.class.getResourceAsStream("schema-0011.db")) {
            Files.copy(in, folder.resolve("visit.db"));
        }
        try (VisitStore store = VisitStore.openForReading(folder)) {
            VisitTables.of(store, ZoneTable.load(), Disclosure.WHOLE)
                    .csvAndJson()
                    .forEach((name, text) -> {
                        String table = name.substring(0, name.lastIndexOf('.'));
                        if (name.endsWith(".csv")) {
                            csv.put(
                                    table,
                                    List.of(text.lines()
                                            .findFirst()
                                            .orElseThrow()
                                            .split(",")));
                        } else {
                            json.put(table, keys(text));
                        }
                    });
        }
        assertThat(documented("CSV").keySet()).isEqualTo(csv.keySet());
        csv.forEach((table, columns) ->
                assertThat(columns).as(table).isEqualTo(lists("CSV").get(table)));
        json.forEach((table, columns) -> assertThat(columns)
                .as(table)
                .containsExactlyInAnyOrderElementsOf(lists("JSON").get(table)));
    }

    private static Map<String, List<String>> lists(String file) {
        try {
            return documented(file);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> keys(String document) {
        try {
            JsonNode rows = new ObjectMapper().readTree(document).elements().next();
            List<String> keys = new ArrayList<>();
            rows.get(0).fieldNames().forEachRemaining(keys::add);
            return keys;
        } catch (Exception e) {
            throw new AssertionError(document, e);
        }
    }
}
