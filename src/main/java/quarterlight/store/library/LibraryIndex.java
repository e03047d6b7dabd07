package quarterlight.store.library;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.store.schema.Database;
import quarterlight.visit.pin.RecordId;

/**
 * The words of many visits in one file, found by SQLite's full-text search (FTS5). A cache: what cannot be read is made anew. Never more than one process
 * writes; another waits. Not for the event thread.
 */
public final class LibraryIndex implements AutoCloseable {
    private static final int VERSION = 4;
    private static final List<String> SCHEMA = List.of(
            "CREATE TABLE visit(id INTEGER PRIMARY KEY, folder TEXT NOT NULL UNIQUE, stamp TEXT NOT NULL, car TEXT NOT"
                    + " NULL, date TEXT, client TEXT, place TEXT, photos INTEGER NOT NULL, " + PictureColumns.TYPED
                    + ") STRICT",
            "CREATE TABLE said(id INTEGER PRIMARY KEY, visit_id INTEGER NOT NULL REFERENCES visit ON DELETE CASCADE,"
                    + " kind TEXT NOT NULL, zone TEXT NOT NULL, text TEXT NOT NULL, more TEXT NOT NULL, row_id INTEGER, "
                    + PictureColumns.TYPED + ") STRICT",
            "CREATE INDEX said_of_visit ON said(visit_id)",
            "CREATE TABLE number(said_id INTEGER NOT NULL REFERENCES said ON DELETE CASCADE, text TEXT NOT NULL,"
                    + " letters INTEGER NOT NULL) STRICT",
            "CREATE INDEX number_of_said ON number(said_id)",
            "CREATE INDEX number_letters ON number(letters, text)",
            "CREATE INDEX number_text ON number(text, said_id)",
            "CREATE VIRTUAL TABLE words USING fts5(zone, text, more, content='said', content_rowid='id',"
                    + " tokenize='unicode61 remove_diacritics 2', prefix='2 3')",
            "CREATE TRIGGER said_added AFTER INSERT ON said BEGIN INSERT INTO words(rowid, zone, text, more) VALUES"
                    + " (new.id, new.zone, new.text, new.more); END",
            "CREATE TRIGGER said_gone AFTER DELETE ON said BEGIN INSERT INTO words(words, rowid, zone, text, more)"
                    + " VALUES ('delete', old.id, old.zone, old.text, old.more); END",
            "PRAGMA user_version = " + VERSION);
    private static final String OF_VISIT =
            "v.folder, v.stamp, v.car, v.date, v.client, v.place, v.photos, " + PictureColumns.of("v");
    private static final String COLUMNS =
            OF_VISIT + ", s.kind, s.zone, s.text, s.more, s.row_id, " + PictureColumns.of("s");
    private static final int VISIT_COLUMNS = 7;
    private static final int ROW_COLUMNS = 6;

    private final Path file;
    private final Connection connection;

    private LibraryIndex(Path file, Connection connection) {
        this.file = file;
        this.connection = connection;
    }

    /** Opens the index, or makes it. */
    public static LibraryIndex open(Path file) throws LibraryUnusable {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            try {
                return opened(file);
            } catch (SQLException e) {
                discard(file);
                return opened(file);
            }
        } catch (SQLException | IOException e) {
            throw new LibraryUnusable(file, e);
        }
    }

    /** Deletes an index with what lies beside it; the next is made anew. */
    public static void discard(Path file) throws IOException {
        Files.deleteIfExists(file);
        Files.deleteIfExists(Path.of(file + "-wal"));
        Files.deleteIfExists(Path.of(file + "-shm"));
        Files.deleteIfExists(Path.of(file + "-journal"));
    }

    private static LibraryIndex opened(Path file) throws SQLException, IOException {
        Connection connection = Database.open(file);
        try {
            String version = Database.ask(connection, "PRAGMA user_version");
            if (!version.equals(Integer.toString(VERSION)) && !version.equals("0")) {
                connection.close();
                discard(file);
                return opened(file);
            }
            Database.ask(connection, "PRAGMA journal_mode = WAL");
            Database.run(connection, "PRAGMA synchronous = NORMAL");
            if (version.equals("0")) {
                for (String statement : SCHEMA) {
                    Database.run(connection, statement);
                }
            }
            return new LibraryIndex(file, connection);
        } catch (SQLException | IOException e) {
            connection.close();
            throw e;
        }
    }

    /** The stamps of all visits that the index knows, by their folders. */
    public Map<Path, String> stamps() throws LibraryUnusable {
        try (PreparedStatement ask = connection.prepareStatement("SELECT folder, stamp FROM visit");
                ResultSet found = ask.executeQuery()) {
            Map<Path, String> stamps = new LinkedHashMap<>();
            while (found.next()) {
                stamps.put(Path.of(found.getString(1)), found.getString(2));
            }
            return stamps;
        } catch (SQLException e) {
            throw new LibraryUnusable(file, e);
        }
    }

    /** Takes visits in at once: all of them or none. */
    public void put(Map<LibraryVisit, List<LibraryRow>> visits) throws LibraryUnusable {
        try {
            connection.setAutoCommit(false);
            try {
                for (Map.Entry<LibraryVisit, List<LibraryRow>> visit : visits.entrySet()) {
                    delete(visit.getKey().folder());
                    insert(visit.getKey(), visit.getValue());
                }
                connection.commit();
            } catch (SQLException e) {
                connection.rollback();
                throw e;
            } finally {
                connection.setAutoCommit(true);
            }
        } catch (SQLException e) {
            throw new LibraryUnusable(file, e);
        }
    }

    /** Forgets a visit. */
    public void forget(Path folder) throws LibraryUnusable {
        try {
            delete(folder);
        } catch (SQLException e) {
            throw new LibraryUnusable(file, e);
        }
    }

    private void delete(Path folder) throws SQLException {
        for (String sql : List.of(
                "DELETE FROM number WHERE said_id IN (SELECT s.id FROM said s JOIN visit v ON v.id = s.visit_id WHERE"
                        + " v.folder = ?)",
                "DELETE FROM said WHERE visit_id = (SELECT id FROM visit WHERE folder = ?)",
                "DELETE FROM visit WHERE folder = ?")) {
            try (PreparedStatement gone = connection.prepareStatement(sql)) {
                gone.setString(1, folder.toString());
                gone.executeUpdate();
            }
        }
    }

    private void insert(LibraryVisit visit, List<LibraryRow> rows) throws SQLException {
        try (PreparedStatement add = connection.prepareStatement(
                        "INSERT INTO visit(folder, stamp, car, date, client, place, photos, " + PictureColumns.NAMES
                                + values(VISIT_COLUMNS));
                PreparedStatement say =
                        connection.prepareStatement("INSERT INTO said(visit_id, kind, zone, text, more, row_id, "
                                + PictureColumns.NAMES + values(ROW_COLUMNS));
                PreparedStatement bear =
                        connection.prepareStatement("INSERT INTO number(said_id, text, letters) VALUES (?, ?, ?)")) {
            add.setString(1, visit.folder().toString());
            add.setString(2, visit.stamp());
            add.setString(3, visit.car());
            add.setString(4, visit.date().orElse(null));
            add.setString(5, visit.client().orElse(null));
            add.setString(6, visit.place().orElse(null));
            add.setInt(VISIT_COLUMNS, visit.photos());
            PictureColumns.set(add, VISIT_COLUMNS + 1, visit.picture());
            long id = added(add);
            for (LibraryRow row : rows) {
                say.setLong(1, id);
                say.setString(2, row.kind());
                say.setString(3, row.zone());
                say.setString(4, row.text());
                say.setString(5, row.more());
                say.setObject(ROW_COLUMNS, row.row().map(RecordId::value).orElse(null));
                PictureColumns.set(say, ROW_COLUMNS + 1, row.picture());
                long said = added(say);
                for (String number : row.numbers()) {
                    bear.setLong(1, said);
                    bear.setString(2, number);
                    bear.setInt(3, number.length());
                    bear.executeUpdate();
                }
            }
        }
    }

    /** The end of a statement that adds a row with a picture. */
    private static String values(int columns) {
        return ") VALUES (" + "?, ".repeat(columns + PictureColumns.COUNT - 1) + "?) RETURNING id";
    }

    /** The number of the row that a statement adds. */
    private static long added(PreparedStatement adding) throws SQLException {
        try (ResultSet made = adding.executeQuery()) {
            made.next();
            return made.getLong(1);
        }
    }

    /** All visits at or below some folders. */
    public List<LibraryVisit> visits(List<Path> folders) throws LibraryUnusable {
        try (PreparedStatement ask =
                        connection.prepareStatement("SELECT " + OF_VISIT + " FROM visit v ORDER BY v.folder");
                ResultSet found = ask.executeQuery()) {
            List<LibraryVisit> visits = new ArrayList<>();
            while (found.next()) {
                LibraryVisit visit = visit(found);
                if (isBelow(visit, folders)) {
                    visits.add(visit);
                }
            }
            return visits;
        } catch (SQLException e) {
            throw new LibraryUnusable(file, e);
        }
    }

    /**
     * Rows that hold every word of a text, or words that begin with it; those taken in last first.
     *
     * @param most rows to give
     */
    public List<LibraryHit> find(String text, List<Path> folders, int most) throws LibraryUnusable {
        String query = Arrays.stream(text.split("[^\\p{L}\\p{M}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .map(word -> "\"" + word + "\"*")
                .collect(Collectors.joining(" "));
        return query.isEmpty()
                ? List.of()
                : hits(
                        "SELECT " + COLUMNS + " FROM words JOIN said s ON s.id = words.rowid JOIN visit v ON v.id ="
                                + " s.visit_id WHERE words MATCH ? ORDER BY words.rowid DESC",
                        query,
                        folders,
                        most);
    }

    /** Each number that some visit bears, once, if it is so long. */
    public List<String> numbers(int least, int most) throws LibraryUnusable {
        try (PreparedStatement ask =
                connection.prepareStatement("SELECT DISTINCT text FROM number WHERE letters BETWEEN ? AND ?")) {
            ask.setInt(1, least);
            ask.setInt(2, most);
            List<String> numbers = new ArrayList<>();
            try (ResultSet found = ask.executeQuery()) {
                while (found.next()) {
                    numbers.add(found.getString(1));
                }
            }
            return numbers;
        } catch (SQLException e) {
            throw new LibraryUnusable(file, e);
        }
    }

    /**
     * The rows that bear just this number; those taken in last first.
     *
     * @param most rows to give
     */
    public List<LibraryHit> bearing(String number, List<Path> folders, int most) throws LibraryUnusable {
        return hits(
                "SELECT DISTINCT s.id, " + COLUMNS + " FROM number n JOIN said s ON s.id = n.said_id JOIN visit v ON"
                        + " v.id = s.visit_id WHERE n.text = ? ORDER BY s.id DESC",
                number,
                folders,
                most);
    }

    private List<LibraryHit> hits(String sql, String asked, List<Path> folders, int most) throws LibraryUnusable {
        try (PreparedStatement ask = connection.prepareStatement(sql)) {
            ask.setString(1, asked);
            List<LibraryHit> hits = new ArrayList<>();
            try (ResultSet found = ask.executeQuery()) {
                while (hits.size() < most && found.next()) {
                    LibraryVisit visit = visit(found);
                    if (isBelow(visit, folders)) {
                        hits.add(new LibraryHit(visit, row(found)));
                    }
                }
            }
            return hits;
        } catch (SQLException e) {
            throw new LibraryUnusable(file, e);
        }
    }

    private static boolean isBelow(LibraryVisit visit, List<Path> folders) {
        return folders.stream().anyMatch(folder -> visit.folder().startsWith(folder));
    }

    private static LibraryVisit visit(ResultSet found) throws SQLException {
        return new LibraryVisit(
                Path.of(found.getString("folder")),
                found.getString("stamp"),
                found.getString("car"),
                Optional.ofNullable(found.getString("date")),
                Optional.ofNullable(found.getString("client")),
                Optional.ofNullable(found.getString("place")),
                found.getInt("photos"),
                PictureColumns.read(found, "v"));
    }

    private static LibraryRow row(ResultSet found) throws SQLException {
        long row = found.getLong("row_id");
        Optional<RecordId> id = found.wasNull() ? Optional.empty() : Optional.of(new RecordId(row));
        return new LibraryRow(
                found.getString("kind"),
                found.getString("zone"),
                found.getString("text"),
                found.getString("more"),
                PictureColumns.read(found, "s"),
                id,
                List.of());
    }

    @Override
    public void close() throws LibraryUnusable {
        try {
            connection.close();
        } catch (SQLException e) {
            throw new LibraryUnusable(file, e);
        }
    }
}
