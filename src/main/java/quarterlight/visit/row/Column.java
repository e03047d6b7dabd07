package quarterlight.visit.row;

/** A column of a table by its name in the header; a required one must be there, one of earlier tables is read and never written. */
public record Column(String name, boolean required, boolean older) {
    public Column {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a column has a name");
        }
    }

    public static Column required(String name) {
        return new Column(name, true, false);
    }

    public static Column optional(String name) {
        return new Column(name, false, false);
    }

    /** A column of earlier tables: read, never written. */
    public static Column older(String name) {
        return new Column(name, false, true);
    }
}
