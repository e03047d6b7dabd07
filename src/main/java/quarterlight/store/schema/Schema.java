package quarterlight.store.schema;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import quarterlight.store.problem.VisitTooNew;
import quarterlight.store.problem.VisitUnreadable;

/**
 * The schema of a visit's database, as the list of steps that lead to it; step n makes schema n of schema n - 1, in one
 * transaction. A step that was released is never edited.
 */
public record Schema(List<String> steps) {
    /** Marks a file as a visit of this program: the letters QLVT. */
    static final int APPLICATION_ID = 0x514C5654;

    private static final List<String> FILES = List.of(
            "0001-visit.sql",
            "0002-notes.sql",
            "0003-several-photos.sql",
            "0004-whole-digests.sql",
            "0005-chain.sql",
            "0006-facets.sql",
            "0007-origin-of-marks.sql",
            "0008-media.sql",
            "0009-matters.sql",
            "0010-lens.sql",
            "0011-dropped-drafts.sql");

    public Schema {
        steps = List.copyOf(steps);
    }

    /** The schema that this program writes. */
    public static Schema current() {
        return new Schema(FILES.stream().map(Schema::text).toList());
    }

    private static String text(String file) {
        try (InputStream in = Schema.class.getResourceAsStream("/quarterlight/store/migration/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
    }

    public int version() {
        return steps.size();
    }

    public static int versionOf(Connection connection) throws SQLException {
        return (int) Database.askNumber(connection, "PRAGMA user_version");
    }

    /**
     * Checks that a file is a visit of a schema that is known.
     *
     * @return true if it is of an older schema
     * @throws VisitUnreadable if it is no visit
     * @throws VisitTooNew if it is of a newer schema
     */
    public boolean isOlder(Connection connection, Path visit) throws SQLException, VisitUnreadable, VisitTooNew {
        if (Database.askNumber(connection, "PRAGMA application_id") != APPLICATION_ID) {
            throw new VisitUnreadable(visit, "its visit.db was not made by this program", null);
        }
        int found = versionOf(connection);
        if (found > version()) {
            throw new VisitTooNew(visit, found, version());
        }
        return found < version();
    }

    /** What is done at the end of the transaction that brings a database to this schema. */
    @FunctionalInterface
    public interface Ending {
        /** Does nothing. */
        Ending NONE = connection -> {};

        void run(Connection connection) throws SQLException;
    }

    /** Brings a database to this schema, from any older one or from nothing, in one transaction. */
    public void apply(Connection connection, Ending ending) throws SQLException {
        int from = versionOf(connection);
        if (from >= version()) {
            return;
        }
        Database.run(connection, "BEGIN IMMEDIATE");
        try {
            for (String step : steps.subList(from, version())) {
                Database.runScript(connection, step);
            }
            Database.run(connection, "PRAGMA application_id = " + APPLICATION_ID);
            Database.run(connection, "PRAGMA user_version = " + version());
            ending.run(connection);
            Database.run(connection, "COMMIT");
        } catch (SQLException e) {
            Database.run(connection, "ROLLBACK");
            throw e;
        }
    }

    public void apply(Connection connection) throws SQLException {
        apply(connection, Ending.NONE);
    }

    /** This schema as it was when it had so many steps. */
    public Schema at(int version) {
        return new Schema(steps.subList(0, version));
    }
}
