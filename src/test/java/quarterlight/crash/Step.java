package quarterlight.crash;

import java.nio.file.Path;
import java.util.Arrays;

/**
 * One change that a program made to the disk, or a piece of what it said, in the order in which the system finished them.
 *
 * @param path what was changed; empty of {@link Kind#SAY}
 * @param target where a renamed file went, else the path again
 * @param offset where bytes were written, or the length that a file was cut to
 * @param count how many bytes were copied from the path to the target, at the offset of both
 */
@SuppressWarnings("ArrayRecordComponent")
record Step(Kind kind, Path path, Path target, long offset, byte[] bytes, int count) {
    /** What was done. */
    enum Kind {
        CREATE,
        TRUNCATE,
        WRITE,
        COPY,
        RENAME,
        LINK,
        DELETE,
        MAKE_FOLDER,
        FORCE,
        SAY
    }

    static Step of(Kind kind, Path path) {
        return new Step(kind, path, path, 0, new byte[0], 0);
    }

    @Override
    public String toString() {
        return kind + " " + path.getFileName() + (bytes.length > 0 ? " " + bytes.length + " at " + offset : "");
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Step s
                && kind == s.kind
                && path.equals(s.path)
                && target.equals(s.target)
                && offset == s.offset
                && count == s.count
                && Arrays.equals(bytes, s.bytes);
    }

    @Override
    public int hashCode() {
        return path.hashCode();
    }
}
