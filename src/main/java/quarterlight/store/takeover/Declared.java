package quarterlight.store.takeover;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * What a database declares: its tables, indexes, triggers and views, each with its text, as SQLite keeps them. Two databases that declare the same
 * run the same.
 */
public record Declared(Map<String, Item> items) {
    private static final int MAX_ITEMS = 2_000;
    private static final int MAX_NAME = 60;

    /**
     * One declaration.
     *
     * @param type table, index, trigger or view
     * @param table whose it is
     * @param sql empty for an index that SQLite makes by itself
     * @param plain whether it is a table that lies in the file itself
     */
    public record Item(String type, String name, String table, String sql, boolean plain) {
        /** Part by part: each opening asks, and the Java machine would first have to make a comparison of records. */
        boolean sameAs(Item other) {
            return plain == other.plain
                    && type.equals(other.type)
                    && name.equals(other.name)
                    && table.equals(other.table)
                    && sql.equals(other.sql);
        }

        /** For people: {@code trigger "x"}. */
        String shown() {
            return type + " \"" + Declared.shown(name) + "\"";
        }
    }

    public Declared {
        items = Map.copyOf(items);
    }

    private static final String ALL = "SELECT type, name, tbl_name, sql, rootpage FROM main.sqlite_schema";

    public static Declared of(Connection connection) throws SQLException {
        Map<String, Item> found = new TreeMap<>();
        try (PreparedStatement select = connection.prepareStatement(ALL);
                ResultSet result = select.executeQuery()) {
            while (result.next() && found.size() < MAX_ITEMS) {
                Item item = new Item(
                        text(result, 1), text(result, 2), text(result, 3), text(result, 4), result.getLong(5) > 0);
                found.put(item.type() + " " + item.name(), item);
            }
        }
        return new Declared(found);
    }

    private static String text(ResultSet result, int column) throws SQLException {
        return Objects.requireNonNullElse(result.getString(column), "");
    }

    /** Whether both declare the same. */
    public boolean sameAs(Declared other) {
        return items.keySet().equals(other.items.keySet())
                && items.entrySet().stream().allMatch(item -> item.getValue().sameAs(other.items.get(item.getKey())));
    }

    /** A table that lies in the file itself, no view and nothing that a module makes up. */
    boolean hasPlainTable(String name) {
        Item item = items.get("table " + name);
        return item != null && item.plain();
    }

    /** What this declares otherwise than it should, one sentence each. */
    List<String> differences(Declared wanted) {
        List<String> found = new ArrayList<>();
        new TreeMap<>(items).forEach((key, item) -> {
            Item right = wanted.items.get(key);
            if (right == null) {
                found.add("The database declares the " + item.shown() + ", which is none of this program's: left out.");
            } else if (!right.sql().equals(item.sql()) || !right.table().equals(item.table())) {
                found.add("The database declares the " + item.shown()
                        + " otherwise than this program: only its rows were taken, by the program's own declaration.");
            }
        });
        new TreeMap<>(wanted.items).forEach((key, item) -> {
            if (!items.containsKey(key)) {
                found.add("The database lacks the " + item.shown() + ": made anew.");
            }
        });
        return found;
    }

    /** A name from outside as it may be shown: without control characters, and not too long. */
    static String shown(String name) {
        String plain = name.replaceAll("\\p{C}+", " ").strip();
        return plain.length() <= MAX_NAME ? plain : plain.substring(0, MAX_NAME) + "…";
    }
}
