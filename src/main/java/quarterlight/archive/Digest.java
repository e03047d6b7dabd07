package quarterlight.archive;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import quarterlight.visit.photo.Sha256;

/** A SHA-256 digest (FIPS 180-4) and a count of the bytes that went into it. One thread, one use. */
final class Digest {
    private final MessageDigest digest;
    private long bytes;

    Digest() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java platform has SHA-256", e);
        }
    }

    void add(byte[] buffer, int from, int count) {
        digest.update(buffer, from, count);
        bytes += count;
    }

    Digested finish() {
        return new Digested(bytes, new Sha256(HexFormat.of().formatHex(digest.digest())));
    }
}
