package quarterlight.photo.originals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import quarterlight.visit.photo.Sha256;

/** SHA-256 digests of files (FIPS 180-4). */
public final class Digests {
    private Digests() {}

    /** The digest of a file's content. */
    public static Sha256 of(Path file) throws IOException {
        FileBuffer memory = FileBuffer.ofThread();
        try (FileChannel channel = FileChannel.open(file)) {
            MessageDigest digest = sha256();
            for (Optional<ByteBuffer> piece = memory.piece(channel); piece.isPresent(); piece = memory.piece(channel)) {
                digest.update(piece.get());
            }
            return finished(digest);
        }
    }

    /** The digest of a file's first 64 kB, in which photos of one camera differ: they hold the time. */
    public static Sha256 ofBeginning(Path file) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream in = Files.newInputStream(file)) {
            digest.update(in.readNBytes(FileBuffer.PIECE));
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
