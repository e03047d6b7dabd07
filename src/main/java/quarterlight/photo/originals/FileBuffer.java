package quarterlight.photo.originals;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.ReadableByteChannel;
import java.util.Optional;

/**
 * Memory outside the heap that one thread reads files through, piece by piece: a piece can be written and hashed without a copy, and stays in the
 * processor's nearest memory meanwhile. Not safe for several threads.
 */
final class FileBuffer {
    /** Bytes of a piece. Twice as much takes a quarter longer: source, piece and copy must stay in the processor's nearest memory together. */
    static final int PIECE = 1 << 16;

    private static final ThreadLocal<FileBuffer> OF_THREAD = ThreadLocal.withInitial(FileBuffer::new);

    private final ByteBuffer memory = ByteBuffer.allocateDirect(PIECE);

    private FileBuffer() {}

    /** The one of this thread. */
    static FileBuffer ofThread() {
        return OF_THREAD.get();
    }

    /**
     * Reads the next piece.
     *
     * @return what was read, ready to be taken, until the next reading; empty at the end
     */
    Optional<ByteBuffer> piece(ReadableByteChannel from) throws IOException {
        ByteBuffer piece = memory.clear();
        return from.read(piece) < 0 ? Optional.empty() : Optional.of(piece.flip());
    }
}
