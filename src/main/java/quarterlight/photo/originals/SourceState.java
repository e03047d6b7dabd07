package quarterlight.photo.originals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.Objects;

/**
 * What the file system says of a file that is being copied: equal before and after if nobody wrote to it meanwhile.
 *
 * @param bytes its length
 * @param modified when its content changed last; the owner can set it
 * @param changed when anything of it changed last, which nobody can set, where the system keeps that; else as modified
 * @param key which file it is, where the system tells
 */
record SourceState(long bytes, FileTime modified, FileTime changed, String key) {
    /** Memory cards keep times in steps of two seconds (FAT). */
    private static final Duration COARSE = Duration.ofSeconds(3);

    static SourceState of(Path file) throws IOException {
        BasicFileAttributes plain = Files.readAttributes(file, BasicFileAttributes.class);
        return new SourceState(
                plain.size(), plain.lastModifiedTime(), changed(file, plain), Objects.toString(plain.fileKey(), ""));
    }

    private static FileTime changed(Path file, BasicFileAttributes plain) throws IOException {
        try {
            return (FileTime) Files.getAttribute(file, "unix:ctime");
        } catch (UnsupportedOperationException | IllegalArgumentException e) {
            return plain.lastModifiedTime();
        }
    }

    boolean sameAs(SourceState other) {
        return bytes == other.bytes
                && modified.equals(other.modified)
                && changed.equals(other.changed)
                && key.equals(other.key);
    }

    /** Whether it was written to so shortly before another file was made that a further change could bear the same time. */
    boolean isFresh(Path madeAfterwards) throws IOException {
        FileTime now = Files.getLastModifiedTime(madeAfterwards);
        FileTime last = modified.compareTo(changed) > 0 ? modified : changed;
        return Duration.between(last.toInstant(), now.toInstant()).compareTo(COARSE) < 0;
    }
}
