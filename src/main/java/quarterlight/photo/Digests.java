package quarterlight.photo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import quarterlight.visit.Sha256;

/** SHA-256 digests of files (FIPS 180-4). */
public final class Digests {
    private static final int BUFFER = 1 << 17;

    private Digests() {}

    /** The digest of a file's content. */
    public static Sha256 of(Path file) throws IOException {
        MessageDigest digest = sha256();
        byte[] buffer = new byte[BUFFER];
        try (InputStream in = Files.newInputStream(file)) {
            for (int got = in.read(buffer); got >= 0; got = in.read(buffer)) {
                digest.update(buffer, 0, got);
            }
        }
        return finished(digest);
    }

    static Sha256 finished(MessageDigest digest) {
        return new Sha256(HexFormat.of().formatHex(digest.digest()));
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java platform has SHA-256", e);
        }
    }
}
