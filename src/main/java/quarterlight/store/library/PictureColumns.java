package quarterlight.store.library;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.units.Worded;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Sha256;

/** The columns in which the index keeps a picture. */
final class PictureColumns {
    /** For CREATE TABLE. */
    static final String TYPED = "stored TEXT, sha256 TEXT, media TEXT, type TEXT, turned INTEGER, at_s REAL";

    static final String NAMES = "stored, sha256, media, type, turned, at_s";

    /** How many there are. */
    static final int COUNT = 6;

    private PictureColumns() {}

    /** The names, each behind the short name of its table and under a name that begins with it: {@code v.stored AS v_stored}. */
    static String of(String table) {
        return NAMES.replaceAll("(\\w+)", table + ".$1 AS " + table + "_$1");
    }

    /** @param first the number of the first of their parameters */
    static void set(PreparedStatement statement, int first, Optional<LibraryPicture> picture) throws SQLException {
        statement.setString(first, picture.map(LibraryPicture::stored).orElse(null));
        statement.setString(first + 1, picture.map(one -> one.sha256().hex()).orElse(null));
        statement.setString(first + 2, picture.map(one -> one.kind().word()).orElse(null));
        statement.setString(first + 3, picture.map(LibraryPicture::type).orElse(null));
        statement.setObject(first + 4, picture.map(LibraryPicture::orientation).orElse(null));
        OptionalDouble at = picture.map(LibraryPicture::at).orElse(OptionalDouble.empty());
        statement.setObject(first + 5, at.isPresent() ? at.getAsDouble() : null);
    }

    /** @param table the short name given to {@link #of} */
    static Optional<LibraryPicture> read(ResultSet found, String table) throws SQLException {
        String stored = found.getString(table + "_stored");
        if (stored == null) {
            return Optional.empty();
        }
        double at = found.getDouble(table + "_at_s");
        OptionalDouble place = found.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(at);
        return Optional.of(new LibraryPicture(
                stored,
                new Sha256(found.getString(table + "_sha256")),
                Worded.find(MediaKind.class, found.getString(table + "_media")).orElse(MediaKind.PHOTO),
                found.getString(table + "_type"),
                found.getInt(table + "_turned"),
                place));
    }
}
