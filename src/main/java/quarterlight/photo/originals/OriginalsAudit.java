package quarterlight.photo.originals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.task.Progress;
import quarterlight.visit.photo.PhotoFile;

/**
 * What became of the originals since they were taken in.
 *
 * @param changed files whose content is not what was taken in; paths within the visit
 * @param missing files that are gone; paths within the visit
 * @param unreadable files that are there and cannot be read, so that nobody knows whether they are what was taken in; paths within the visit
 * @param unreferenced files in the originals that no photo names: a remark, not a fault
 */
public record OriginalsAudit(
        List<String> changed, List<String> missing, List<String> unreadable, List<String> unreferenced) {
    public OriginalsAudit {
        changed = List.copyOf(changed);
        missing = List.copyOf(missing);
        unreadable = List.copyOf(unreadable);
        unreferenced = List.copyOf(unreferenced);
    }

    /** Whether every original is there, byte for byte. */
    public boolean ok() {
        return changed.isEmpty() && missing.isEmpty() && unreadable.isEmpty();
    }

    /**
     * Reads every original again.
     *
     * @param visitFolder the folder of the visit
     * @throws InvalidPathException if the system's setting for names of files does not know the letters of one, so that nothing can be said of it
     * @throws IOException if the folder of the originals itself cannot be read
     * @throws java.util.concurrent.CancellationException if the progress is cancelled
     */
    public static OriginalsAudit of(Path visitFolder, Collection<PhotoFile> photos, Progress progress)
            throws IOException {
        List<String> changed = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        List<String> unreadable = new ArrayList<>();
        Set<String> named = new HashSet<>();
        int done = 0;
        for (PhotoFile photo : photos) {
            progress.checkCancelled();
            progress.report(done++, photos.size(), photo.name());
            named.addAll(Original.names(photo));
            try {
                if (!same(Original.of(visitFolder, photo), photo)) {
                    changed.add(photo.stored());
                }
            } catch (OriginalRefused e) {
                if (e.getCause() instanceof InvalidPathException name
                        && !photo.stored().contains("\0")) {
                    throw name;
                }
                (e.isMissing() ? missing : changed).add(photo.stored());
            } catch (IOException e) {
                unreadable.add(photo.stored());
            }
        }
        return new OriginalsAudit(changed, missing, unreadable, unreferenced(visitFolder, named));
    }

    private static boolean same(Path file, PhotoFile photo) throws IOException {
        return Files.size(file) == photo.bytes() && Digests.of(file).equals(photo.sha256());
    }

    private static List<String> unreferenced(Path visitFolder, Set<String> named) throws IOException {
        Path originals = visitFolder.resolve(OriginalsFolder.FOLDER);
        if (!Files.isDirectory(originals)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(originals)) {
            return files.filter(file -> !Files.isDirectory(file))
                    .map(file -> visitFolder.relativize(file).toString().replace('\\', '/'))
                    .filter(stored -> !named.contains(stored))
                    .sorted()
                    .toList();
        }
    }
}
