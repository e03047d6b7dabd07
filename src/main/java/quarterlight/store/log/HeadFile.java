package quarterlight.store.log;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * {@code visit.head}: the end of the edit log, kept beside the database so that a log that was cut is noticed, with the seal of the computer that
 * wrote it. Two lines of one length, of which the older is written over in place after each commit: after a power cut it may lag behind the
 * database, never lead, and a line that was torn leaves the other.
 */
public final class HeadFile implements AutoCloseable {
    private static final Pattern LINE =
            Pattern.compile("quarterlight head 1 (\\d{12}) ([0-9a-f]{64}) ([0-9a-f]{64}|-{64})\\s*");
    private static final int LINE_BYTES = 163;
    private static final int MAX_BYTES = 2 * LINE_BYTES;
    private static final int TRIES = 3;

    private final FileChannel channel;
    private final ComputerKey key;
    private int older;

    private HeadFile(FileChannel channel, ComputerKey key, int older) {
        this.channel = channel;
        this.key = key;
        this.older = older;
    }

    /**
     * What a file of this kind says.
     *
     * @param sealed whether this computer wrote it
     */
    public record Kept(LogHead head, boolean sealed) {
        private boolean isAfter(Kept other) {
            return sealed == other.sealed ? head.entry() > other.head.entry() : sealed;
        }
    }

    /** Opens it for writing; it is made if it is not there. */
    public static HeadFile open(Path file, ComputerKey key) throws IOException {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException(file + " is no plain file");
        }
        int newest = newest(lines(file), key);
        FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        return new HeadFile(channel, key, newest == 0 ? 1 : 0);
    }

    public void write(LogHead head) throws IOException {
        String line = "quarterlight head 1 %012d %s %s\n".formatted(head.entry(), head.hash(), key.seal(head));
        ByteBuffer bytes = ByteBuffer.wrap(line.getBytes(StandardCharsets.US_ASCII));
        long place = (long) older * LINE_BYTES;
        while (bytes.hasRemaining()) {
            place += channel.write(bytes, place);
        }
        if (channel.size() > MAX_BYTES) {
            channel.truncate(MAX_BYTES);
        }
        older = 1 - older;
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
        List<String> lines = lines(file);
        int newest = newest(lines, key);
        return newest < 0 ? Optional.empty() : said(lines.get(newest), key);
    }

    /** The text at the places of lines; empty if there is no such file. */
    private static List<String> lines(Path file) {
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MAX_BYTES) {
                return List.of();
            }
            String text = Files.readString(file, StandardCharsets.ISO_8859_1);
            int middle = Math.min(LINE_BYTES, text.length());
            return List.of(text.substring(0, middle), text.substring(middle));
        } catch (IOException e) {
            return List.of();
        }
    }

    /** Which line tells the end: of those that this computer sealed, or else of all, the later one; -1 if none can be understood. */
    private static int newest(List<String> lines, ComputerKey key) {
        int newest = -1;
        Optional<Kept> best = Optional.empty();
        for (int i = 0; i < lines.size(); i++) {
            Optional<Kept> one = said(lines.get(i), key);
            if (one.isPresent() && (best.isEmpty() || one.get().isAfter(best.get()))) {
                best = one;
                newest = i;
            }
        }
        return newest;
    }

    private static Optional<Kept> said(String text, ComputerKey key) {
        Matcher line = LINE.matcher(text);
        if (!line.matches()) {
            return Optional.empty();
        }
        LogHead head = new LogHead(Long.parseLong(line.group(1)), line.group(2));
        return Optional.of(new Kept(head, key.sealed(head, line.group(3))));
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
