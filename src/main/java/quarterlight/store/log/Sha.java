package quarterlight.store.log;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256 over parts that are told apart by their lengths, so that no two lists of parts have the same bytes. */
final class Sha {
    private final MessageDigest digest;
    private final byte[] length = new byte[4];

    Sha() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    Sha add(String part) {
        return add(part.getBytes(StandardCharsets.UTF_8));
    }

    Sha add(byte[] part) {
        int size = part.length;
        length[0] = (byte) (size >> 24);
        length[1] = (byte) (size >> 16);
        length[2] = (byte) (size >> 8);
        length[3] = (byte) size;
        digest.update(length);
        digest.update(part);
        return this;
    }

    /** The hash of what was added; begins anew. */
    byte[] finish() {
        return digest.digest();
    }
}
