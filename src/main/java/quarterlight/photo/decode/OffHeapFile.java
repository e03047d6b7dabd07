package quarterlight.photo.decode;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import org.bytedeco.javacpp.BytePointer;

/**
 * A whole file in memory outside the heap, for native code to read. Not safe for several threads. The memory of a file of usual size is kept for the next
 * one: memory that is new to a process costs about as much as reading a file into it.
 */
final class OffHeapFile implements AutoCloseable {
    private static final long MAX_BYTES = 64L << 20;
    private static final long KEPT_BYTES = 8L << 20;
    private static final AtomicReference<BytePointer> KEPT = new AtomicReference<>();

    private final BytePointer memory;
    private final ByteBuffer bytes;

    private OffHeapFile(long size) {
        BytePointer kept = size <= KEPT_BYTES ? KEPT.getAndSet(null) : null;
        memory = kept == null ? new BytePointer(Math.max(size, KEPT_BYTES)) : kept;
        bytes = memory.asByteBuffer().limit((int) size);
    }

    /** Whether a file of this size can be held here. */
    static boolean holds(long size) {
        return size > 0 && size <= MAX_BYTES && ScaledJpegDecoder.available();
    }

    /**
     * A file read whole.
     *
     * @param size as long as it is; see {@link #holds}
     */
    static OffHeapFile of(Path file, long size) throws IOException {
        OffHeapFile held = new OffHeapFile(size);
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

    public BytePointer memory() {
        return memory;
    }

    public long size() {
        return bytes.limit();
    }

    @Override
    public void close() {
        if (memory.capacity() > KEPT_BYTES || !KEPT.compareAndSet(null, memory)) {
            memory.close();
        }
    }
}
