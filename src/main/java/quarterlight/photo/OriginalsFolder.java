package quarterlight.photo;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.HashSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import quarterlight.file.Lasting;
import quarterlight.visit.Sha256;

/**
 * The folder {@code originals} of a visit: files byte for byte as they came.
 * <p>A copy is written under a temporary name, forced to the disk, read back and compared, and only then moved to its name; a copy that was
 * interrupted is a file that ends in {@code .part} and counts for nothing. A file that lies there is never written to again.
 */
public final class OriginalsFolder {
    private static final System.Logger LOG = System.getLogger(OriginalsFolder.class.getName());
    static final String FOLDER = "originals";
    static final String UNFINISHED = ".part";
    /** File systems allow 255 bytes a name; the digest's prefix and a margin go off. */
    private static final int MOST_NAME_BYTES = 200;

    private static final int MOST_ENDING_LETTERS = 10;

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
     * @param held its content as read back, if it was asked for and there is room; until {@link #release}
     */
    record Copy(Path file, String name, Sha256 sha256, long bytes, Optional<HeldFile> held) {
        /** Gives the memory back. */
        void release() {
            held.ifPresent(HeldFile::close);
        }
    }

    /**
     * Copies a file in and proves the copy.
     *
     * @return where it lies; the same again if its content lies there already under the same name
     * @throws OriginalNotKept if the source cannot be read, changed while it was copied, or the copy read back is not what was read
     * @throws OriginalsUnwritable if the disk of the visit takes no more
     */
    public StoredOriginal keep(Path source) throws OriginalNotKept, OriginalsUnwritable {
        return settle(copy(source, false));
    }

    /**
     * The first half of {@link #keep}: copies, reads back, compares.
     *
     * @param hold whether what is read back is wanted in memory
     */
    Copy copy(Path source, boolean hold) throws OriginalNotKept, OriginalsUnwritable {
        String name = nameOf(source);
        Path unfinished = folder.resolve(UUID.randomUUID() + UNFINISHED);
        Optional<HeldFile> held = Optional.empty();
        boolean proved = false;
        try {
            Files.createDirectories(folder);
            MessageDigest digest = Digests.sha256();
            long bytes = copy(source, unfinished, digest);
            Sha256 sha256 = Digests.finished(digest);
            if (bytes != sizeOf(source)) {
                throw new OriginalNotKept(source, "it changed while it was copied; take it in again");
            }
            held = hold ? HeldFile.ofSize(bytes) : held;
            Pieces memory = held.isPresent() ? held.get() : FileBuffer.ofThread();
            if (!Digests.of(unfinished, memory).equals(sha256) || Files.size(unfinished) != bytes) {
                throw new OriginalNotKept(source, "the copy read back is not the same; check the disk of the visit");
            }
            proved = true;
            return new Copy(unfinished, name, sha256, bytes, held);
        } catch (IOException e) {
            throw new OriginalsUnwritable(folder, e);
        } finally {
            if (!proved) {
                held.ifPresent(HeldFile::close);
                discard(unfinished);
            }
        }
    }

    /** The second half of {@link #keep}: waits until the disk has the copy, then gives it its name. */
    StoredOriginal settle(Copy copy) throws OriginalsUnwritable {
        try {
            try (FileChannel channel = FileChannel.open(copy.file(), StandardOpenOption.WRITE)) {
                channel.force(false);
            }
            String stored = storedName(copy.sha256(), copy.name());
            Lasting.rename(copy.file(), folder.resolve(stored));
            return new StoredOriginal(copy.name(), FOLDER + "/" + stored, copy.sha256(), copy.bytes());
        } catch (IOException e) {
            throw new OriginalsUnwritable(folder, e);
        } finally {
            discard(copy.file());
        }
    }

    /**
     * Brings the names of everything that was settled to the disk for good; to be called before a row names it.
     *
     * @throws OriginalsUnwritable if the disk of the visit takes no more
     */
    public void forceNames() throws OriginalsUnwritable {
        try {
            Lasting.forceFolder(folder);
        } catch (IOException e) {
            throw new OriginalsUnwritable(folder, e);
        }
    }

    /**
     * What lay in the works when an earlier intake broke off: one of these files may have been why. To be called only by the one process that edits
     * the visit, before it copies.
     */
    public Set<Sha256> unfinished() {
        Set<Sha256> found = new HashSet<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*" + UNFINISHED)) {
            for (Path file : files) {
                found.add(Digests.of(file));
            }
        } catch (NoSuchFileException e) {
            LOG.log(System.Logger.Level.DEBUG, "no originals yet");
        } catch (IOException | DirectoryIteratorException e) {
            LOG.log(System.Logger.Level.WARNING, "unfinished copies could not be read in " + folder, e);
        }
        return found;
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

    private static long sizeOf(Path source) throws OriginalNotKept {
        try {
            return Files.size(source);
        } catch (IOException e) {
            throw OriginalNotKept.unreadable(source, e);
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
     * The name in the originals: the digest's prefix and the original name, with letters that some file systems refuse replaced and a long
     * name cut before its ending. Two files that share both prefix and name are the same file.
     */
    static String storedName(Sha256 sha256, String name) {
        String plain = REFUSED_LETTERS.matcher(name).replaceAll("_");
        String safe = REFUSED_ENDING.matcher(plain).replaceAll("_");
        int dot = safe.lastIndexOf('.');
        boolean hasEnding = dot > 0 && safe.length() - dot <= MOST_ENDING_LETTERS;
        String ending = hasEnding ? safe.substring(dot) : "";
        String stem = hasEnding ? safe.substring(0, dot) : safe;
        while (!stem.isEmpty() && (stem + ending).getBytes(StandardCharsets.UTF_8).length > MOST_NAME_BYTES) {
            stem = stem.substring(0, stem.offsetByCodePoints(stem.length(), -1));
        }
        return sha256.prefix() + "-" + stem + ending;
    }
}
