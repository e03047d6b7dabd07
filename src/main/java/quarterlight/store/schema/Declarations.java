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
    private static final Map<Schema, Declarations> KNOWN = new ConcurrentHashMap<>();

    public static Declarations of(Schema schema) throws SQLException {
        Declarations known = KNOWN.get(schema);
        if (known == null) {
            try (Connection connection = Database.openInMemory()) {
                schema.apply(connection);
                known = new Declarations(Declared.of(connection), UndoJournal.tables(connection));
            }
            KNOWN.put(schema, known);
        }
        return known;
    }
}
