package quarterlight.store.log;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * {@code visit.head}: the end of the edit log, kept beside the database so that a log that was cut is noticed, with the seal of the computer that
 * wrote it. One line of one length, written over in place after each commit: after a power cut it may lag behind the database, never lead.
 */
public final class HeadFile implements AutoCloseable {
    private static final Pattern LINE =
            Pattern.compile("quarterlight head 1 (\\d{12}) ([0-9a-f]{64}) ([0-9a-f]{64}|-{64})\\s*");
    private static final int MAX_BYTES = 400;
    private static final int TRIES = 3;

    private final FileChannel channel;
    private final ComputerKey key;

    private HeadFile(FileChannel channel, ComputerKey key) {
        this.channel = channel;
        this.key = key;
    }

    /**
     * What a file of this kind says.
     *
     * @param sealed whether this computer wrote it
     */
    public record Kept(LogHead head, boolean sealed) {}

    /** Opens it for writing; it is made if it is not there. */
    public static HeadFile open(Path file, ComputerKey key) throws IOException {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException(file + " is no plain file");
        }
        return new HeadFile(
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS),
                key);
    }

    public void write(LogHead head) throws IOException {
        String line = "quarterlight head 1 %012d %s %s%n".formatted(head.entry(), head.hash(), key.seal(head));
        ByteBuffer bytes = ByteBuffer.wrap(line.replace("\r\n", "\n").getBytes(StandardCharsets.US_ASCII));
        long place = 0;
        while (bytes.hasRemaining()) {
            place += channel.write(bytes, place);
        }
        if (channel.size() > place) {
            channel.truncate(place);
        }
    }

    /** Brings it to the disk for good. */
    public void force() throws IOException {
        channel.force(true);
    }

    /** What the file says; empty if it is not there or says nothing that can be understood. */
    public static Optional<Kept> read(Path file, ComputerKey key) {
        Optional<Kept> kept = Optional.empty();
        for (int i = 0; i < TRIES && !kept.map(Kept::sealed).orElse(false); i++) {
            kept = once(file, key);
            if (kept.isEmpty() && !Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                return kept;
            }
        }
        return kept;
    }

    private static Optional<Kept> once(Path file, ComputerKey key) {
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MAX_BYTES) {
                return Optional.empty();
            }
            Matcher line = LINE.matcher(Files.readString(file, StandardCharsets.ISO_8859_1));
            if (!line.matches()) {
                return Optional.empty();
            }
            LogHead head = new LogHead(Long.parseLong(line.group(1)), line.group(2));
            return Optional.of(new Kept(head, key.sealed(head, line.group(3))));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
