package quarterlight.edit.archive;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import quarterlight.visit.photo.Sha256;

/**
 * An archive that was made.
 *
 * @param sha256 of the whole file: who knows it can tell this archive from any other
 * @param originals how many went in
 * @param changed originals that are not what was taken in; they went in as they are, links and the like did not
 * @param missing originals that are gone
 * @param unreadable originals that are there and cannot be read, so that nobody knows whether they are what was taken in; they did not go in
 * @param unnamed files among the originals that no photo names, and links among the pages; they did not go in
 * @param head number and hash of the last entry of the edit log, which stands for all of it
 * @param key fingerprint of the key that signed it; empty if nobody did
 */
public record Archived(
        Path file,
        long bytes,
        Sha256 sha256,
        int originals,
        List<String> changed,
        List<String> missing,
        List<String> unreadable,
        List<String> unnamed,
        Optional<String> head,
        Optional<String> key) {
    public Archived {
        changed = List.copyOf(changed);
        missing = List.copyOf(missing);
        unreadable = List.copyOf(unreadable);
        unnamed = List.copyOf(unnamed);
    }

    /** Whether every original is as it was taken in. */
    public boolean ok() {
        return changed.isEmpty() && missing.isEmpty() && unreadable.isEmpty();
    }
}
