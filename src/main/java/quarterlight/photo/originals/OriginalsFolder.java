package quarterlight.photo.originals;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import quarterlight.file.DurableFiles;
import quarterlight.file.PlacedFile;
import quarterlight.file.ReservedSpace;
import quarterlight.visit.photo.Sha256;

/**
 * The folder {@code originals} of a visit: files byte for byte as they came.
 * <p>A copy is written under a temporary name, forced to the disk, read back and compared, and only then moved to its name; a copy that was
 * interrupted is a file that ends in {@code .part} and counts for nothing. A file that lies there is never written to again.
 */
public final class OriginalsFolder {
    private static final System.Logger LOG = System.getLogger(OriginalsFolder.class.getName());
    static final String FOLDER = "originals";
    static final String UNFINISHED = ".part";
    /** File systems allow 255 bytes a name; the digest and a margin go off. */
    private static final int MAX_NAME_BYTES = 170;

    private static final int MAX_ATTEMPTS = 3;

    private static final int MAX_ENDING_LETTERS = 10;

    /** What some file systems refuse in a name, and at its end. */
    private static final Pattern REFUSED_LETTERS = Pattern.compile("[\\\\/:*?\"<>|\\p{Cntrl}\\x{FFFD}]");

    private static final Pattern REFUSED_ENDING = Pattern.compile("[. ]+$");

    private final Path folder;

    /** @param visitFolder the folder of the visit; its {@code originals} is made when the first file comes */
    public OriginalsFolder(Path visitFolder) {
        this.folder = Objects.requireNonNull(visitFolder, "visitFolder").resolve(FOLDER);
    }

    /**
     * A copy that is proved but still bears a temporary name; {@link #settle} makes it count.
     *
     * @param file where it lies
     * @param name its name when it came
     */
    public record Copy(Path file, String name, Sha256 sha256, long bytes) {}

    /**
     * Copies a file in and proves the copy.
     *
     * @return where it lies; the same again if its content lies there already under the same name
     * @throws OriginalNotKept if the source cannot be read, changes while it is copied, or the copy read back is not what was read
     * @throws OriginalsUnwritable if the disk of the visit takes no more
     */
    public StoredOriginal keep(Path source) throws OriginalNotKept, OriginalsUnwritable {
        return settle(copy(source));
    }

    /** The first half of {@link #keep}: copies, reads back, compares. A file that changes meanwhile is copied again, but not forever. */
    public Copy copy(Path source) throws OriginalNotKept, OriginalsUnwritable {
        Path unfinished = folder.resolve(UUID.randomUUID() + UNFINISHED);
        boolean proved = false;
        try {
            makeFolder();
            for (int attempt = 0; attempt < MAX_ATTEMPTS && !proved; attempt++) {
                Optional<Copy> copy = copied(source, unfinished);
                proved = copy.isPresent();
                if (proved) {
                    return copy.get();
                }
                Files.delete(unfinished);
            }
            throw new OriginalNotKept(source, say("problem.media.written"));
        } catch (IOException e) {
            throw new OriginalsUnwritable(folder, e);
        } finally {
            if (!proved) {
                discard(unfinished);
            }
        }
    }

    private void makeFolder() throws IOException {
        if (Original.isLinked(folder)) {
            throw new IOException(say("problem.media.link"));
        }
        Files.createDirectories(folder);
    }

    /** One try; empty if the source changed while it was copied. */
    private static Optional<Copy> copied(Path source, Path unfinished) throws IOException, OriginalNotKept {
        SourceState before = stateOf(source);
        MessageDigest digest = Digests.sha256();
        long bytes = copy(source, unfinished, digest);
        Sha256 sha256 = Digests.finished(digest);
        if (!Digests.of(unfinished).equals(sha256) || Files.size(unfinished) != bytes) {
            throw new OriginalNotKept(source, say("problem.media.copy"));
        }
        boolean same = before.sameAs(stateOf(source))
                && bytes == before.bytes()
                && (!before.isFresh(unfinished) || sha256.equals(digestOf(source)));
        return same ? Optional.of(new Copy(unfinished, nameOf(source), sha256, bytes)) : Optional.empty();
    }

    private static SourceState stateOf(Path source) throws OriginalNotKept {
        try {
            return SourceState.of(source);
        } catch (IOException e) {
            throw OriginalNotKept.unreadable(source, e);
        }
    }

    private static Sha256 digestOf(Path source) throws OriginalNotKept {
        try {
            return Digests.of(source);
        } catch (IOException e) {
            throw OriginalNotKept.unreadable(source, e);
        }
    }

    /** The second half of {@link #keep}: waits until the disk has the copy, then gives it its name. What lies there already is never replaced. */
    public StoredOriginal settle(Copy copy) throws OriginalsUnwritable {
        try {
            try (FileChannel channel = FileChannel.open(copy.file(), StandardOpenOption.WRITE)) {
                channel.force(false);
            }
            String stored = storedName(copy.sha256(), copy.name());
            for (int number = 2; !place(copy, folder.resolve(stored)); number++) {
                stored = storedName(copy.sha256(), number + "-" + copy.name());
            }
            return new StoredOriginal(copy.name(), FOLDER + "/" + stored, copy.sha256(), copy.bytes());
        } catch (IOException e) {
            throw new OriginalsUnwritable(folder, e);
        } finally {
            discard(copy.file());
        }
    }

    /** Removes a copy that does not count. */
    public void discard(Copy copy) {
        discard(copy.file());
    }

    /** Gives a copy its name; false if that name is taken by other content, such as a copy that a power cut left damaged. */
    private static boolean place(Copy copy, Path target) throws IOException {
        try {
            PlacedFile.move(copy.file(), target);
            return true;
        } catch (FileAlreadyExistsException e) {
            return Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)
                    && Files.size(target) == copy.bytes()
                    && Digests.of(target).equals(copy.sha256());
        }
    }

    /** Keeps room on the disk of the visit until it is closed, under a name that counts for nothing. */
    public ReservedSpace keepRoom() {
        return ReservedSpace.by(folder.resolve(UUID.randomUUID() + UNFINISHED));
    }

    /** Waits until the disk has the names of the files too; to be called before they are recorded. */
    public void forceNames() throws OriginalsUnwritable {
        try {
            DurableFiles.forceFolder(folder);
        } catch (IOException e) {
            throw new OriginalsUnwritable(folder, e);
        }
    }

    /** Removes the copies that an interrupted intake left unfinished; to be called only by the one process that edits the visit. */
    public void discardUnfinished() {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*" + UNFINISHED)) {
            files.forEach(OriginalsFolder::discard);
        } catch (NoSuchFileException e) {
            LOG.log(System.Logger.Level.DEBUG, "no originals yet");
        } catch (IOException | DirectoryIteratorException e) {
            LOG.log(System.Logger.Level.WARNING, "unfinished copies could not be removed from " + folder, e);
        }
    }

    private static void discard(Path unfinished) {
        try {
            Files.deleteIfExists(unfinished);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "an unfinished copy could not be removed: " + unfinished, e);
        }
    }

    /** Whether a path lies within the folder of this visit, so that taking it in would take in the visit itself. */
    public boolean isOfThisVisit(Path path) {
        Path visit = real(folder.getParent());
        return real(path).startsWith(visit);
    }

    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            return path.toAbsolutePath().normalize();
        }
    }

    private static String nameOf(Path source) {
        return Optional.ofNullable(source.getFileName()).map(Path::toString).orElse("unnamed");
    }

    /** Failures to read are told apart from failures to write: the one concerns a file, the other ends the work. */
    private static long copy(Path source, Path target, MessageDigest digest) throws IOException, OriginalNotKept {
        FileBuffer buffer = FileBuffer.ofThread();
        try (FileChannel in = opened(source);
                FileChannel out = FileChannel.open(
                        target, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
            long bytes = 0;
            for (Optional<ByteBuffer> piece = read(in, buffer, source);
                    piece.isPresent();
                    piece = read(in, buffer, source)) {
                ByteBuffer rest = piece.get();
                digest.update(rest.duplicate());
                bytes += rest.remaining();
                while (rest.hasRemaining()) {
                    out.write(rest);
                }
            }
            return bytes;
        }
    }

    private static FileChannel opened(Path source) throws OriginalNotKept {
        try {
            return FileChannel.open(source);
        } catch (IOException e) {
            throw OriginalNotKept.unreadable(source, e);
        }
    }

    private static Optional<ByteBuffer> read(FileChannel in, FileBuffer buffer, Path source) throws OriginalNotKept {
        try {
            return buffer.piece(in);
        } catch (IOException e) {
            throw OriginalNotKept.unreadable(source, e);
        }
    }

    /**
     * The name in the originals: the whole digest and the original name, with letters that some file systems refuse replaced and a long name cut
     * before its ending.
     */
    static String storedName(Sha256 sha256, String name) {
        String plain = REFUSED_LETTERS.matcher(name).replaceAll("_");
        String safe = REFUSED_ENDING.matcher(plain).replaceAll("_");
        int dot = safe.lastIndexOf('.');
        boolean hasEnding = dot > 0 && safe.length() - dot <= MAX_ENDING_LETTERS;
        String ending = hasEnding ? safe.substring(dot) : "";
        String stem = hasEnding ? safe.substring(0, dot) : safe;
        while (!stem.isEmpty() && (stem + ending).getBytes(StandardCharsets.UTF_8).length > MAX_NAME_BYTES) {
            stem = stem.substring(0, stem.offsetByCodePoints(stem.length(), -1));
        }
        return sha256.hex() + "-" + stem + ending;
    }
}
