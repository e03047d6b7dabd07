package quarterlight.store.schema;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import quarterlight.store.takeover.Declared;

/**
 * What a database of a schema declares, found by making one in memory.
 *
 * @param tables in alphabetical order
 */
public record Declarations(Declared declared, List<String> tables) {
    /** By the steps: a list of texts is compared sooner than a record, whose comparison the Java machine first has to make. */
    private static final Map<List<String>, Declarations> KNOWN = new ConcurrentHashMap<>();

    public static Declarations of(Schema schema) throws SQLException {
        Declarations known = KNOWN.get(schema.steps());
        if (known == null) {
            try (Connection connection = Database.openInMemory()) {
                schema.apply(connection);
                known = new Declarations(Declared.of(connection), UndoJournal.tables(connection));
            }
            KNOWN.put(schema.steps(), known);
        }
        return known;
    }
}
