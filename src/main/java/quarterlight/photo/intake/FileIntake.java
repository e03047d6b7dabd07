package quarterlight.photo.intake;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.photo.originals.Digests;
import quarterlight.photo.originals.OriginalNotKept;
import quarterlight.photo.originals.OriginalsFolder;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.originals.StoredOriginal;
import quarterlight.photo.pixels.Thumbnail;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.MediaProbe;
import quarterlight.photo.worker.WorkerLost;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/** Takes one file in: a proven copy in the originals, what it says of itself, a thumbnail and its sharpness. Safe for several threads. */
public final class FileIntake {
    /** What the platform puts where a name's bytes are no text in its character set. */
    private static final char UNKNOWN_LETTER = '\uFFFD';

    private final OriginalsFolder originals;
    private final DecodingWorkers workers;
    private final Clock clock;

    /** @param clock says when a recorded time lies in the future */
    public FileIntake(Path visitFolder, DecodingWorkers workers, Clock clock) {
        this.originals = new OriginalsFolder(Objects.requireNonNull(visitFolder, "visitFolder"));
        this.workers = Objects.requireNonNull(workers, "workers");
        this.clock = Objects.requireNonNull(clock, "clock");
    }

    /**
     * A file that was taken in.
     *
     * @param thumbnail JPEG, upright, sRGB; empty if the picture cannot be shown
     */
    public record Taken(PhotoFile file, Optional<Thumbnail> thumbnail) {}

    /** A file that is copied and was looked at; it counts once it is settled. */
    public static final class Seen {
        private final OriginalsFolder.Copy copy;
        private final MediaProbe looked;
        private final Optional<Sha256> beside;

        private Seen(OriginalsFolder.Copy copy, MediaProbe looked, Optional<Sha256> beside) {
            this.copy = copy;
            this.looked = looked;
            this.beside = beside;
        }
    }

    /**
     * Copies the file, proves the copy, and has it looked at by a worker. A picture that cannot be shown is a note, with the camera's own small picture
     * in its place if there is one.
     *
     * @throws OriginalNotKept if the file cannot be read or proved
     * @throws OriginalsUnwritable if the disk of the visit takes no more
     * @throws WorkerLost if the file brought its worker down; it is not taken in
     */
    public Seen look(FolderScan.Found found) throws OriginalNotKept, OriginalsUnwritable, WorkerLost {
        OriginalsFolder.Copy copy = originals.copy(found.file());
        boolean seen = false;
        try {
            MediaProbe looked = workers.look(copy.file(), found.type(), clock.instant());
            Seen result = new Seen(copy, looked, found.about().isPresent() ? found.about() : digest(found.beside()));
            seen = true;
            return result;
        } catch (IOException e) {
            throw new OriginalsUnwritable(copy.file(), e);
        } finally {
            if (!seen) {
                originals.discard(copy);
            }
        }
    }

    /** Of the file that this one lies beside; empty if that cannot be read, and then it is refused by itself. */
    private static Optional<Sha256> digest(Optional<Path> file) {
        try {
            return file.isPresent() ? Optional.of(Digests.of(file.get())) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Waits until the disk has the copy, and gives it its name among the originals. */
    public Taken settle(Seen seen) throws OriginalsUnwritable {
        StoredOriginal original = originals.settle(seen.copy);
        List<String> notes = new ArrayList<>(seen.looked.notes());
        if (original.name().indexOf(UNKNOWN_LETTER) >= 0) {
            notes.add(
                    0,
                    "Its name holds letters that this computer's setting for file names does not know; they are lost.");
        }
        return new Taken(
                seen.looked.facts().asPhotoFile(original, seen.looked.sharpness(), notes, seen.beside),
                seen.looked.thumbnail());
    }
}
