package quarterlight.edit.archive;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import quarterlight.archive.BagWriter;
import quarterlight.archive.Digested;
import quarterlight.archive.Packing;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.file.Leftovers;
import quarterlight.photo.originals.Original;
import quarterlight.photo.originals.OriginalRefused;
import quarterlight.store.folder.VisitFolder;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;

/** Puts the files of a visit's folder into a bag; links are never followed. One thread, one use. */
final class BaggedFiles {
    private final BagWriter bag;
    private final Progress progress;
    final List<String> changed = new ArrayList<>();
    final List<String> missing = new ArrayList<>();
    final List<String> unreadable = new ArrayList<>();
    final List<String> unnamed = new ArrayList<>();
    int originals;

    BaggedFiles(BagWriter bag, Progress progress) {
        this.bag = bag;
        this.progress = progress;
    }

    /** Every original, compared with what was taken in while it is written. */
    void originals(VisitFolder visit, List<Photo> photos) throws IOException {
        Set<String> named = new HashSet<>();
        int done = 0;
        for (Photo photo : photos) {
            progress.checkCancelled();
            progress.report(done++, photos.size(), photo.file().name());
            named.addAll(Original.names(photo.file()));
            original(visit.root(), photo.file());
        }
        for (Path file : files(visit.originals())) {
            String path = relative(visit.root(), file);
            if (!named.contains(path)) {
                unnamed.add(path);
            }
        }
    }

    private void original(Path root, PhotoFile photo) throws IOException {
        try {
            Path file = Original.of(root, photo);
            if (!BagWriter.accepts(photo.stored())) {
                changed.add(photo.stored());
                return;
            }
            if (!Files.isReadable(file)) {
                unreadable.add(photo.stored());
                return;
            }
            try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
                Digested digested = bag.put(photo.stored(), Packing.CARRIED, in, progress);
                originals++;
                if (!digested.sha256().equals(photo.sha256())) {
                    changed.add(photo.stored());
                }
            }
        } catch (OriginalRefused e) {
            (e.isMissing() ? missing : changed).add(photo.stored());
        }
    }

    /** The body diagrams of one's own that were ever chosen for the visit. */
    void diagrams(Path root) throws IOException {
        Path folder = root.resolve(VisitDiagram.FOLDER);
        for (Path file : files(folder)) {
            put(VisitDiagram.FOLDER + "/" + relative(folder, file), file);
        }
    }

    /** Pictures as a buyer may see them, below {@code pictures/}. */
    void pictures(Path folder) throws IOException {
        for (Path file : files(folder)) {
            progress.checkCancelled();
            put(Archiving.PICTURES + "/" + relative(folder, file), file, Packing.CARRIED);
        }
    }

    private void put(String path, Path file) throws IOException {
        put(path, file, Packing.SMALLER);
    }

    /** A plain file; anything else stays out and is named. */
    private void put(String path, Path file, Packing packing) throws IOException {
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && BagWriter.accepts(path)) {
            try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
                bag.put(path, packing, in, progress);
            }
        } else {
            unnamed.add(path);
        }
    }

    /** Every plain file of a folder of pages, below {@code pages/}. */
    void pages(Path folder) throws IOException {
        for (Path file : files(folder)) {
            progress.checkCancelled();
            put("pages/" + relative(folder, file), file);
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS))
                    .filter(file -> !isLeftover(folder.relativize(file)))
                    .sorted()
                    .toList();
        }
    }

    private static boolean isLeftover(Path file) {
        return StreamSupport.stream(file.spliterator(), false).anyMatch(part -> Leftovers.isName(part.toString()));
    }

    private static String relative(Path root, Path file) {
        return root.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
    }
}
