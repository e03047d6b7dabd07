package quarterlight.archive;

import static quarterlight.language.Sentences.say;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Where a table of an archive says something else than the database. Columns that only one of the two has are no difference: another version of the
 * program may have written the archive; nor are a sign before a cell that keeps other programs from reading it as a formula, or another way
 * of writing one number.
 */
public final class TableDifference {
    private static final int MAX_SHOWN = 40;

    private TableDifference() {}

    /**
     * The first difference, as half a sentence.
     *
     * @param archived the table as it lies in the archive
     * @param wanted the table as the database gives it
     */
    public static Optional<String> of(String name, String archived, String wanted) {
        try {
            return name.endsWith(".json") ? rows(json(archived), json(wanted)) : rows(csv(archived), csv(wanted));
        } catch (IOException | IllegalStateException | IllegalArgumentException | java.io.UncheckedIOException e) {
            return Optional.of(say("archived.table.unreadable"));
        }
    }

    private static Optional<String> rows(List<Map<String, String>> archived, List<Map<String, String>> wanted) {
        if (archived.size() != wanted.size()) {
            return Optional.of(say("archived.table.rows", archived.size(), wanted.size()));
        }
        for (int i = 0; i < wanted.size(); i++) {
            for (Map.Entry<String, String> cell : wanted.get(i).entrySet()) {
                String there = archived.get(i).getOrDefault(cell.getKey(), cell.getValue());
                if (!same(there, cell.getValue())) {
                    return Optional.of(
                            say("archived.table.cell", (i + 1), cell.getKey(), shown(there), shown(cell.getValue())));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean same(String there, String wanted) {
        return there.equals(wanted) || plain(there).equals(plain(wanted));
    }

    private static String plain(String cell) {
        return cell.replaceFirst("^['\t]+", "");
    }

    private static String shown(String cell) {
        String plain = cell.replaceAll("\\p{C}+", " ");
        return plain.length() <= MAX_SHOWN ? plain : plain.substring(0, MAX_SHOWN) + "…";
    }

    private static List<Map<String, String>> json(String text) throws JsonProcessingException {
        List<Map<String, String>> rows = new ArrayList<>();
        for (JsonNode table : new ObjectMapper().readTree(text)) {
            for (JsonNode row : table) {
                Map<String, String> cells = new LinkedHashMap<>();
                for (Map.Entry<String, JsonNode> field : row.properties()) {
                    cells.put(field.getKey(), cell(field.getValue()));
                }
                rows.add(cells);
            }
        }
        return rows;
    }

    private static String cell(JsonNode value) {
        if (value.isNumber()) {
            return value.decimalValue().stripTrailingZeros().toString();
        }
        return value.isTextual() ? value.asText() : value.toString();
    }

    private static List<Map<String, String>> csv(String text) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        List<String> header = List.of();
        try (var parser = CSVFormat.RFC4180.parse(new java.io.StringReader(text))) {
            for (CSVRecord record : parser) {
                if (header.isEmpty()) {
                    header = record.toList();
                } else {
                    Map<String, String> cells = new LinkedHashMap<>();
                    for (int i = 0; i < record.size(); i++) {
                        cells.put(i < header.size() ? header.get(i) : "column " + (i + 1), record.get(i));
                    }
                    rows.add(cells);
                }
            }
        }
        return rows;
    }
}
