package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Changes of a visit's database that somebody might send: of its bytes, its rows, and what it declares. */
final class MutatedDatabase {
    private static final List<String> VALUES = List.of(
            "NULL",
            "''",
            "' '",
            "'\u0000'",
            "-1",
            "0",
            "1",
            "2",
            "9223372036854775807",
            "-9223372036854775808",
            "1e308",
            "-1e308",
            "9e999",
            "0.1",
            "'NaN'",
            "'1e999999999'",
            "'-5'",
            "'../../x'",
            "'/etc/passwd'",
            "'originals/x'",
            "x'00ff'",
            "zeroblob(100000)",
            "'POLYGON ((0 0, 1 1'",
            "'POLYGON (())'",
            "'POLYGON ((0 0, 0 0, 0 0))'",
            "'POLYGON ((1e308 0, 0 1e308, -1e308 0, 1e308 0))'",
            "'length:0 0 0 0:0'",
            "'length:a b c d:e'",
            "'coin:'",
            "'rectangle:1 1 1 1 1 1 1 1:0 x 0'",
            "'9999-99-99'",
            "'2026-03-29T02:30:00'",
            "'-999999999-01-01'",
            "'+999999999-12-31T23:59:59.999999999'",
            "'PT1H'",
            "'PT-9223372036854775808S'",
            "'Europe/Nowhere'",
            "'+18:01'",
            "'\u001b[31m'",
            "'hood'",
            "'HOOD'",
            "replace(hex(zeroblob(2000)), '0', 'a')",
            "'1 2 3'",
            "'99999999999999999999'",
            "char(55296)",
            "'trunk-floor'",
            "'measured'",
            "'over'");

    private MutatedDatabase() {}

    static void bytes(Path file, Random random) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        int kind = random.nextInt(4);
        if (kind == 0) {
            bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length));
        } else if (kind == 1) {
            int page = 4096 * random.nextInt(bytes.length / 4096);
            int other = 4096 * random.nextInt(bytes.length / 4096);
            System.arraycopy(bytes.clone(), page, bytes, other, 4096);
        } else {
            int from = kind == 2 ? 0 : 4096;
            int times = 1 + random.nextInt(kind == 2 ? 4 : 300);
            for (int i = 0; i < times; i++) {
                bytes[from + random.nextInt(kind == 2 ? 4096 : bytes.length - 4096)] ^= (byte) (1 << random.nextInt(8));
            }
        }
        Files.write(file, bytes);
    }

    /** Rows and declarations, in the same database or in tables that check nothing. */
    static void rows(Path file, Random random) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA foreign_keys = OFF");
            statement.execute("PRAGMA ignore_check_constraints = ON");
            int changes = 1 + random.nextInt(6);
            for (int i = 0; i < changes; i++) {
                // asked anew each time: a view in place of a table has no end
                List<String> tables = names(
                        statement,
                        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'"
                                + " AND name NOT LIKE 'p %'");
                change(statement, tables.get(random.nextInt(tables.size())), random);
            }
        }
    }

    static List<String> names(Statement statement, String query) throws SQLException {
        List<String> found = new ArrayList<>();
        try (ResultSet result = statement.executeQuery(query)) {
            while (result.next()) {
                found.add(result.getString(1));
            }
        }
        return found;
    }

    private static void change(Statement statement, String table, Random random) throws SQLException {
        List<String> columns = names(statement, "SELECT name FROM pragma_table_info('" + table + "')");
        if (columns.isEmpty()) {
            return;
        }
        String column = columns.get(random.nextInt(columns.size()));
        String value = VALUES.get(random.nextInt(VALUES.size()));
        try {
            statement.executeUpdate(
                    switch (random.nextInt(8)) {
                        case 0 ->
                            "CREATE TABLE \"new\" AS SELECT * FROM \"" + table + "\"; DROP TABLE \"" + table
                                    + "\"; ALTER TABLE \"new\" RENAME TO \"" + table + "\"; UPDATE \"" + table
                                    + "\" SET \"" + column
                                    + "\" = " + value;
                        case 1 ->
                            "CREATE TRIGGER \"t" + random.nextInt() + "\" AFTER UPDATE ON \"" + table
                                    + "\" BEGIN DELETE FROM \"" + table + "\"; END";
                        case 2 ->
                            "DROP TABLE \"" + table + "\"; CREATE VIEW \"" + table
                                    + "\" AS WITH RECURSIVE n(id) AS (SELECT 1 UNION ALL SELECT id + 1 FROM n) SELECT id FROM n";
                        case 3 -> "ALTER TABLE \"" + table + "\" DROP COLUMN \"" + column + "\"";
                        case 4 -> "DELETE FROM \"" + table + "\" WHERE id % 2 = 0";
                        default ->
                            "UPDATE \"" + table + "\" SET \"" + column + "\" = " + value + " WHERE id % "
                                    + (1 + random.nextInt(3)) + " = 0";
                    });
        } catch (SQLException e) {
            // what SQLite itself refuses cannot be sent
            assertThat(e.getMessage()).isNotNull();
        }
    }
}
