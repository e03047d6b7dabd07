package quarterlight.table.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import quarterlight.table.text.FormulaCell;
import quarterlight.table.text.NumberText;
import quarterlight.visit.StoredRows;

/** Tables as they are kept, as CSV (RFC 4180) and as JSON. */
public final class StoredRowsText {
    private static final String END = "\r\n";

    private StoredRowsText() {}

    /** A header and one row per row; what is unknown is an empty cell, yes and no stand for truth values. */
    public static String csv(StoredRows table) {
        StringBuilder out =
                new StringBuilder(CSVFormat.RFC4180.format(table.columns().toArray())).append(END);
        for (List<Optional<Object>> row : table.rows()) {
            Object[] cells = row.stream()
                    .map(cell -> cell.map(StoredRowsText::cell).orElse(""))
                    .toArray();
            out.append(CSVFormat.RFC4180.format(cells)).append(END);
        }
        return out.toString();
    }

    private static String cell(Object value) {
        if (value instanceof Double number) {
            return NumberText.of(number);
        }
        return value instanceof Boolean yes ? (yes ? "yes" : "no") : FormulaCell.guarded(value.toString());
    }

    /** One object per row, keys as the columns; what is unknown is null. */
    public static List<JsonObject> json(StoredRows table) {
        return json(table, MathContext.UNLIMITED);
    }

    /** @param digits of numbers that are not whole */
    public static List<JsonObject> json(StoredRows table, MathContext digits) {
        return table.rows().stream()
                .map(row -> object(table.columns(), row, digits))
                .toList();
    }

    private static JsonObject object(List<String> columns, List<Optional<Object>> row, MathContext digits) {
        JsonObject object = new JsonObject();
        for (int i = 0; i < columns.size(); i++) {
            object.put(columns.get(i), row.get(i).map(value -> plain(value, digits)));
        }
        return object;
    }

    /** A number as short as it can be written: 12 instead of 12.0, no exponent. */
    private static Object plain(Object value, MathContext digits) {
        return value instanceof Double number
                ? new BigDecimal(NumberText.of(
                        new BigDecimal(NumberText.of(number)).round(digits).doubleValue()))
                : value;
    }

    /** A document that holds one table, under its name with underscores. */
    public static String document(StoredRows table) {
        return new JsonObject().put(key(table), json(table)).text();
    }

    /** The key of a table in a document: {@code edit_log}. */
    public static String key(StoredRows table) {
        return table.table().replace('-', '_');
    }
}
