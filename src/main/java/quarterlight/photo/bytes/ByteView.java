package quarterlight.photo.bytes;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file read here and there, big-endian unless said otherwise; never more at once than a caller's bound allows. */
public final class ByteView implements AutoCloseable {
    private final SeekableByteChannel channel;
    private final long length;

    private ByteView(SeekableByteChannel channel) throws IOException {
        this.channel = channel;
        this.length = channel.size();
    }

    public static ByteView open(Path file) throws IOException {
        return new ByteView(Files.newByteChannel(file));
    }

    public long length() {
        return length;
    }

    /** @throws EOFException if the file ends before, or the position is impossible */
    public byte[] bytes(long at, int count) throws IOException {
        if (at < 0 || count < 0 || at > length - count) {
            throw new EOFException("the file ends early");
        }
        ByteBuffer buffer = ByteBuffer.allocate(count);
        channel.position(at);
        while (buffer.hasRemaining()) {
            if (channel.read(buffer) < 0) {
                throw new EOFException("the file ends early");
            }
        }
        return buffer.array();
    }

    public int u8(long at) throws IOException {
        return bytes(at, 1)[0] & 0xFF;
    }

    public int u16(long at) throws IOException {
        return (int) unsigned(at, 2);
    }

    public int u24LittleEndian(long at) throws IOException {
        byte[] b = bytes(at, 3);
        return (b[0] & 0xFF) | (b[1] & 0xFF) << 8 | (b[2] & 0xFF) << 16;
    }

    public long u32(long at) throws IOException {
        return unsigned(at, 4);
    }

    public long u32LittleEndian(long at) throws IOException {
        return Integer.toUnsignedLong(Integer.reverseBytes((int) u32(at)));
    }

    /** An unsigned number of {@code count} bytes, 0 to 8; of 8 bytes the sign is the caller's affair. */
    public long unsigned(long at, int count) throws IOException {
        long value = 0;
        for (byte b : bytes(at, count)) {
            value = value << 8 | (b & 0xFF);
        }
        return value;
    }

    public String fourLetters(long at) throws IOException {
        return new String(bytes(at, 4), StandardCharsets.ISO_8859_1);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
