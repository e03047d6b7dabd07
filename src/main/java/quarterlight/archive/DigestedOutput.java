package quarterlight.archive;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Passes bytes on and digests them on the way. */
public final class DigestedOutput extends FilterOutputStream {
    private final Digest digest = new Digest();

    public DigestedOutput(OutputStream out) {
        super(out);
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] buffer, int from, int count) throws IOException {
        out.write(buffer, from, count);
        digest.add(buffer, from, count);
    }

    /** What went through; called once, at the end. */
    public Digested finish() {
        return digest.finish();
    }
}
