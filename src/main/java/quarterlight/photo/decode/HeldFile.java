package quarterlight.photo.decode;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.ReadableByteChannel;
import java.nio.file.Path;
import java.util.Optional;
import org.bytedeco.javacpp.BytePointer;
import quarterlight.photo.originals.Pieces;

/** A whole file in memory outside the heap, for native code to read. Not safe for several threads. */
public final class HeldFile implements Pieces, AutoCloseable {
    private static final long MOST_BYTES = 256L << 20;

    private final BytePointer memory;
    private final ByteBuffer bytes;

    private HeldFile(long size) {
        memory = new BytePointer(size);
        bytes = memory.asByteBuffer();
    }

    /** Room for a file to be read piece by piece; empty for one too large, and where the native part is missing. */
    public static Optional<HeldFile> ofSize(long size) {
        return holds(size) ? Optional.of(new HeldFile(size)) : Optional.empty();
    }

    /** Whether a file of this size can be held here. */
    static boolean holds(long size) {
        return size > 0 && size <= MOST_BYTES && ScaledJpegDecoder.available();
    }

    /**
     * A file read whole.
     *
     * @param size as long as it is; see {@link #holds}
     */
    static HeldFile of(Path file, long size) throws IOException {
        HeldFile held = new HeldFile(size);
        try (FileChannel channel = FileChannel.open(file)) {
            while (held.bytes.hasRemaining()) {
                if (channel.read(held.bytes) < 0) {
                    throw new EOFException("the file became shorter");
                }
            }
            return held;
        } catch (IOException | RuntimeException e) {
            held.close();
            throw e;
        }
    }

    /** {@inheritDoc} What is more than there is room for is not read. */
    @Override
    public Optional<ByteBuffer> piece(ReadableByteChannel from) throws IOException {
        int start = bytes.position();
        bytes.limit(Math.min(bytes.capacity(), start + PIECE));
        return from.read(bytes) < 0 || bytes.position() == start
                ? Optional.empty()
                : Optional.of(bytes.duplicate().flip().position(start));
    }

    public BytePointer memory() {
        return memory;
    }

    public long size() {
        return memory.capacity();
    }

    @Override
    public void close() {
        memory.close();
    }
}
