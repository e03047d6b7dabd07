package quarterlight.visit.row;

/** A column of a table by its name in the header; a required one must be there. */
public record Column(String name, boolean required) {
    public Column {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a column has a name");
        }
    }

    public static Column required(String name) {
        return new Column(name, true);
    }

    public static Column optional(String name) {
        return new Column(name, false);
    }
}
