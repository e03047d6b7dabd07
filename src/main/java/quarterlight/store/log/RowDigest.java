package quarterlight.store.log;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The digest of a row: SHA-256 over the name, type and value of every cell that is not NULL, in the order of the names. A column that a later
 * schema adds changes no digest as long as it is empty. Written as 43 letters of Base64.
 * <p>Source: RFC 4648, section 5, for Base64 with letters that may stand in names of files, without padding.
 */
public final class RowDigest {
    private static final byte[] REAL = bytes("real");
    private static final byte[] INTEGER = bytes("integer");
    private static final byte[] BLOB = bytes("blob");
    private static final byte[] TEXT = bytes("text");

    private final List<Column> columns = new ArrayList<>();
    private final ResultSet result;
    private final Sha sha = new Sha();

    @SuppressWarnings("ArrayRecordComponent")
    private record Column(byte[] name, int number) {}

    /** @param result all columns of a table */
    public RowDigest(ResultSet result) throws SQLException {
        this.result = result;
        ResultSetMetaData data = result.getMetaData();
        Map<String, Integer> byName = new TreeMap<>();
        for (int i = 1; i <= data.getColumnCount(); i++) {
            byName.put(data.getColumnName(i), i);
        }
        byName.forEach((name, number) -> columns.add(new Column(bytes(name), number)));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Of the row at hand. */
    public String ofRow() throws SQLException {
        for (Column column : columns) {
            Object cell = result.getObject(column.number());
            if (cell != null) {
                sha.add(column.name());
                add(cell);
            }
        }
        return Base64.getUrlEncoder().withoutPadding().encodeToString(sha.finish());
    }

    private void add(Object cell) {
        if (cell instanceof Double real) {
            sha.add(REAL).add(Long.toHexString(Double.doubleToLongBits(real)));
        } else if (cell instanceof Number whole) {
            sha.add(INTEGER).add(Long.toString(whole.longValue()));
        } else if (cell instanceof byte[] bytes) {
            sha.add(BLOB).add(bytes);
        } else {
            sha.add(TEXT).add(cell.toString());
        }
    }
}
