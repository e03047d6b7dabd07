package quarterlight.photo.originals;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.ReadableByteChannel;
import java.util.Optional;

/** Memory that a file is read into piece by piece. */
public interface Pieces {
    /** Bytes of a piece. Twice as much takes a quarter longer: source, piece and copy must stay in the processor's nearest memory together. */
    int PIECE = 1 << 16;

    /**
     * Reads the next piece.
     *
     * @return what was read, ready to be taken, until the next reading; empty at the end
     */
    Optional<ByteBuffer> piece(ReadableByteChannel from) throws IOException;
}
