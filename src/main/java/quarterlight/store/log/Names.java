package quarterlight.store.log;

/** Names of tables and columns as they stand in SQL, whatever characters they have. */
public final class Names {
    private Names() {}

    /** As an identifier: {@code "a ""b"""}. */
    public static String quoted(String name) {
        return "\"" + name.replace("\"", "\"\"") + "\"";
    }

    /** As a text: {@code 'it''s'}. */
    public static String text(String name) {
        return "'" + name.replace("'", "''") + "'";
    }
}
