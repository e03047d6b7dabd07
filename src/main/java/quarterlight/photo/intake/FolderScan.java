package quarterlight.photo.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.photo.MediaType;
import quarterlight.photo.Refusal;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Sha256;

/**
 * What lies in folders, told apart by content: photos, films, papers and sounds, what lies beside them, other files, and what cannot be read.
 * <p>Folders are walked in the order given, each in the order of its names; a folder reached twice (by a link that loops, or named twice)
 * is walked once. Hidden files and folders (a name that begins with a dot) are not photos.
 *
 * @param media photos, films, papers and sounds, each with its format; behind them words and sidecars that lie beside one
 * @param notPhotos other files, hidden files
 * @param refused files and folders that cannot be taken in, with the reason
 */
public record FolderScan(List<Found> media, List<Path> notPhotos, List<Refusal> refused) {
    private static final int DEEPEST = 200;

    /**
     * A photo, film, paper or sound in a folder, or what lies beside one.
     *
     * @param beside what words or a sidecar are about
     * @param about what words are about, if that is in the visit already
     */
    public record Found(Path file, MediaType type, Optional<Path> beside, Optional<Sha256> about) {
        /** What stands for itself. */
        public Found(Path file, MediaType type) {
            this(file, type, Optional.empty(), Optional.empty());
        }

        /** Written out, as is {@link #hashCode}: every intake asks, and the Java machine would first have to make a comparison of records. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Found found
                    && file.equals(found.file)
                    && type == found.type
                    && beside.equals(found.beside)
                    && about.equals(found.about);
        }

        @Override
        public int hashCode() {
            return file.hashCode();
        }
    }

    public FolderScan {
        media = List.copyOf(media);
        notPhotos = List.copyOf(notPhotos);
        refused = List.copyOf(refused);
    }

    /**
     * Walks folders (a single file may stand for a folder).
     *
     * @throws java.util.concurrent.CancellationException if the progress is cancelled
     */
    public static FolderScan of(List<Path> folders, Progress progress) {
        return of(folders, Optional.empty(), progress);
    }

    /** @param spared a folder that is not walked but listed among what are not photos: the visit's own */
    public static FolderScan of(List<Path> folders, Optional<Path> spared, Progress progress) {
        Walk walk = new Walk(progress, spared.map(FolderScan::real));
        folders.forEach(folder -> walk.visit(folder, 0, true));
        walk.tie();
        return new FolderScan(walk.media, walk.notPhotos, walk.refused);
    }

    private static Path real(Path folder) {
        try {
            return folder.toRealPath();
        } catch (IOException e) {
            return folder.toAbsolutePath().normalize();
        }
    }

    private static final class Walk {
        private final List<Found> media = new ArrayList<>();
        private final List<Path> notPhotos = new ArrayList<>();
        private final List<Refusal> refused = new ArrayList<>();
        private final List<Found> lying = new ArrayList<>();
        private final Set<Path> seen = new HashSet<>();
        private final Progress progress;
        private final Optional<Path> spared;

        Walk(Progress progress, Optional<Path> spared) {
            this.progress = progress;
            this.spared = spared;
        }

        void visit(Path path, int depth, boolean named) {
            progress.checkCancelled();
            if (!named && hidden(path)) {
                notPhotos.add(path);
            } else if (Files.isDirectory(path)) {
                visitFolder(path, depth);
            } else if (Files.isRegularFile(path)) {
                classify(path);
            } else if (Files.exists(path)) {
                notPhotos.add(path);
            } else {
                refused.add(new Refusal(path, "there is no such file, or the link leads nowhere"));
            }
        }

        private void visitFolder(Path folder, int depth) {
            if (depth > DEEPEST) {
                refused.add(new Refusal(folder, "folders are nested more than " + DEEPEST + " deep"));
                return;
            }
            List<Path> children = new ArrayList<>();
            try {
                Path real = folder.toRealPath();
                if (!seen.add(real)) {
                    return;
                }
                if (spared.equals(Optional.of(real))) {
                    notPhotos.add(folder);
                    return;
                }
                try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
                    entries.forEach(children::add);
                }
            } catch (IOException | DirectoryIteratorException | UncheckedIOException | InvalidPathException e) {
                refused.add(new Refusal(folder, "the folder cannot be read (" + Refusal.because(e) + ")"));
            }
            children.sort(Comparator.comparing(child -> child.getFileName().toString()));
            children.forEach(child -> visit(child, depth + 1, false));
        }

        private void classify(Path file) {
            String name = file.getFileName().toString();
            Optional<MediaType> claimed = MediaType.claimedBy(name);
            if (claimed.filter(CompanionMatch::isBeside).isPresent()) {
                lying.add(new Found(file, claimed.get()));
                return;
            }
            byte[] head;
            try (InputStream in = Files.newInputStream(file)) {
                head = in.readNBytes(MediaType.HEAD_BYTES);
            } catch (IOException e) {
                refused.add(new Refusal(file, "the file cannot be read (" + Refusal.because(e) + ")"));
                return;
            }
            Optional<MediaType> type = MediaType.of(head);
            if (type.isEmpty() && claimed.equals(Optional.of(MediaType.JPEG)) && MediaType.beginsAsJpeg(head)) {
                type = claimed;
            }
            if (type.isPresent()) {
                media.add(new Found(file, type.get()));
            } else if (claimed.isPresent()) {
                refused.add(new Refusal(
                        file,
                        head.length == 0
                                ? "the file is empty"
                                : "named as " + claimed.get().word() + ", but its content is no "
                                        + (claimed.get().kind().isCameras()
                                                ? "photo or film"
                                                : claimed.get().kind().word())));
            } else {
                notPhotos.add(file);
            }
        }

        /** Words and sidecars join what they lie beside; those that lie alone are left alone. */
        void tie() {
            CompanionMatch companionship = new CompanionMatch(media);
            for (Found found : lying) {
                Optional<Path> beside = companionship.of(found);
                if (beside.isPresent()) {
                    media.add(new Found(found.file(), found.type(), beside, Optional.empty()));
                } else {
                    notPhotos.add(found.file());
                }
            }
        }

        private static boolean hidden(Path path) {
            Path name = path.getFileName();
            return name != null && name.toString().startsWith(".");
        }
    }
}
