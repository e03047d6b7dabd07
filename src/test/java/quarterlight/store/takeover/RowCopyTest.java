package quarterlight.store.takeover;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;

class RowCopyTest {
    private static final int CELL = 1000;

    private static Connection table(int rows) throws SQLException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:");
        try (Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE note (id INTEGER PRIMARY KEY, said TEXT, seen BLOB)");
            for (int id = 1; id <= rows; id++) {
                statement.execute("INSERT INTO note VALUES (" + id + ", '" + "x".repeat(CELL / 2) + "', zeroblob("
                        + CELL / 2 + "))");
            }
        }
        return connection;
    }

    private static int copied(long roomBytes, TakeoverNotes slip) throws SQLException {
        try (Connection from = table(3);
                Connection into = table(0)) {
            new RowCopy(from, into, slip, new LeftOutRows(slip), roomBytes).copy("note");
            try (Statement statement = into.createStatement();
                    ResultSet count = statement.executeQuery("SELECT count(*) FROM note")) {
                return count.getInt(1);
            }
        }
    }

    @Test
    void rowsThatFitAreAllCopied() throws SQLException {
        TakeoverNotes slip = new TakeoverNotes();
        assertThat(copied(3 * CELL, slip)).isEqualTo(3);
        assertThat(slip.lines()).isEmpty();
    }

    @Test
    void rowsThatClaimMoreThanTheFileHoldsAreLeftOutAndTold() throws SQLException {
        TakeoverNotes slip = new TakeoverNotes();
        assertThat(copied(3 * CELL - 1, slip)).isEqualTo(2);
        assertThat(slip.lines()).singleElement().asString().contains("note", "row 3");
    }
}
