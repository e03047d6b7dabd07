package quarterlight.store.folder;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import quarterlight.file.PlacedFile;

/**
 * Gives the originals of a visit that was just upgraded the names that its database now has for them: the whole digest in place of its first 12 digits.
 * <p>The database comes first, then each file by itself, and no file is ever replaced. Readers find a file by either name, so the work may be cut off
 * between any two steps; what it left undone keeps its earlier name.
 */
public final class OriginalNameUpgrade {
    private static final System.Logger LOG = System.getLogger(OriginalNameUpgrade.class.getName());
    private static final int SHORT = 12;
    private static final int WHOLE = 64;

    private OriginalNameUpgrade() {}

    public static void replace(VisitFolder visit, Connection connection) throws SQLException {
        Path folder = visit.originals();
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        Map<String, String> wholeNames = wholeNames(connection);
        Map<String, Long> claims = new LinkedHashMap<>();
        wholeNames.keySet().forEach(name -> claims.merge(earlier(name), 1L, Long::sum));
        wholeNames.forEach((name, digest) -> {
            Path before = folder.resolve(earlier(name));
            try {
                boolean alone = claims.get(earlier(name)) == 1;
                if (Files.isRegularFile(before, LinkOption.NOFOLLOW_LINKS)
                        && !Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)
                        && (alone || digestOf(before).equals(digest))) {
                    PlacedFile.move(before, folder.resolve(name));
                }
            } catch (IOException e) {
                LOG.log(System.Logger.Level.WARNING, "an original keeps its earlier name: " + before, e);
            }
        });
    }

    /** Names in the originals that begin with a whole digest, each with that digest. */
    private static Map<String, String> wholeNames(Connection connection) throws SQLException {
        Map<String, String> names = new LinkedHashMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT substr(stored, 11), sha256 FROM photo WHERE"
                        + " substr(stored, 1, 75) = 'originals/' || sha256 || '-' AND instr(substr(stored, 11), '/') = 0"
                        + " AND instr(stored, '\\') = 0")) {
            while (rows.next()) {
                names.put(rows.getString(1), rows.getString(2));
            }
        }
        return names;
    }

    private static String earlier(String name) {
        return name.substring(0, SHORT) + name.substring(WHOLE);
    }

    private static String digestOf(Path file) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
                in.transferTo(java.io.OutputStream.nullOutputStream());
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java platform has SHA-256", e);
        }
    }
}
