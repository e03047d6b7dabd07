package quarterlight.edit.intake;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import quarterlight.capture.TimeText;
import quarterlight.edit.EditRefused;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.film.FilmFrame;
import quarterlight.photo.intake.FileIntake;
import quarterlight.photo.intake.FolderScan;
import quarterlight.photo.originals.OriginalNotKept;
import quarterlight.photo.originals.OriginalsFolder;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.OriginalPictures;
import quarterlight.photo.worker.WorkerLost;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.annotation.KeptFrame;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;

/**
 * Keeps single frames of films as photos of their own, so that they can be drawn on, outlined and handed on. The film is only read. The
 * frame bears the film's camera, place and recorded time plus the moment, and names the film.
 */
public final class FrameKeeping {
    private static final int MAX_NAME_LETTERS = 50;
    private static final int NANOS_PER_MS = 1_000_000;

    private final VisitStore store;
    private final Clock clock;
    private final ThumbnailShelf shelf;
    private final DecodingWorkers workers;

    /** @param workers decode the film; they are the caller's to close */
    public FrameKeeping(VisitStore store, Clock clock, ThumbnailShelf shelf, DecodingWorkers workers) {
        this.workers = Objects.requireNonNull(workers, "workers");
        this.store = Objects.requireNonNull(store, "store");
        this.clock = Objects.requireNonNull(clock, "clock");
        this.shelf = Objects.requireNonNull(shelf, "shelf");
    }

    /**
     * Keeps the frame that is shown at a moment, as one edit.
     *
     * @param seconds from the film's beginning; the frame counts from its own beginning
     * @return the photo that holds the frame; the same again if it was kept before
     * @throws EditRefused if there is no such film, or the moment lies outside of it
     * @throws PictureUnreadable if the frame cannot be decoded here
     * @throws OriginalsUnwritable if the disk takes no more
     */
    public PhotoId keep(PhotoId film, double seconds)
            throws EditRefused, PictureUnreadable, OriginalsUnwritable, VisitProblem {
        PhotoFile file = filmOf(film, seconds);
        FilmFrame frame = new OriginalPictures(store.folder().root(), workers).frame(file, seconds);
        try {
            Path folder = Files.createTempDirectory("quarterlight-frame");
            Path made = folder.resolve(name(file, frame.seconds()));
            try {
                ImageIO.write(frame.picture(), "png", made.toFile());
                return takeIn(made, file, frame.seconds());
            } finally {
                Files.deleteIfExists(made);
                Files.deleteIfExists(folder);
            }
        } catch (IOException e) {
            throw new EditRefused("frame", say("refused.frame.folder"));
        }
    }

    private PhotoId takeIn(Path made, PhotoFile film, double seconds)
            throws EditRefused, OriginalsUnwritable, VisitProblem {
        Path visitFolder = store.folder().root();
        try {
            FileIntake taking = new FileIntake(visitFolder, workers, clock);
            FileIntake.Taken taken = taking.settle(taking.look(new FolderScan.Found(made, MediaType.PNG)));
            new OriginalsFolder(visitFolder).forceNames();
            PhotoFile kept = described(taken.file(), film, seconds);
            PhotoId id = record(film, kept);
            taken.thumbnail().ifPresent(thumbnail -> shelf.put(kept.sha256(), thumbnail.jpeg()));
            return id;
        } catch (OriginalNotKept e) {
            throw new EditRefused("frame", say("refused.frame.kept", e.reason()));
        } catch (WorkerLost e) {
            throw new EditRefused("frame", say("refused.frame.kept", e.reason()));
        }
    }

    private PhotoId record(PhotoFile film, PhotoFile kept) throws VisitProblem {
        Optional<PhotoId> before = store.read().photos().stream()
                .filter(photo -> photo.file().sha256().equals(kept.sha256()))
                .map(Photo::id)
                .findFirst();
        return before.isPresent() ? before.get() : store.edit(say("undo.frame", film.name()), tx -> tx.addPhoto(kept));
    }

    private PhotoFile filmOf(PhotoId film, double seconds) throws EditRefused, VisitProblem {
        PhotoFile file = store.read()
                .photo(film)
                .map(Photo::file)
                .orElseThrow(() -> new EditRefused("film", say("refused.frame.none", film)));
        if (file.kind() != MediaKind.FILM) {
            throw new EditRefused("film", say("refused.frame.photo", file.name()));
        }
        OptionalDouble length = file.seconds();
        if (!(seconds >= 0) || length.isPresent() && seconds > length.getAsDouble()) {
            throw new EditRefused(
                    "at",
                    length.isPresent()
                            ? say("refused.frame.beyond", file.name(), seconds, length.getAsDouble())
                            : say("refused.frame.moment", file.name(), seconds));
        }
        return file;
    }

    /** Such as {@code VID_0231.MP4 at 12.480 s.png}. */
    private static String name(PhotoFile film, double seconds) {
        String safe = film.name().replaceAll("[\\\\/:*?\"<>|\\p{Cntrl}\\x{FFFD}]", "_");
        int letters = Math.min(MAX_NAME_LETTERS, safe.codePointCount(0, safe.length()));
        return safe.substring(0, safe.offsetByCodePoints(0, letters)) + " at " + shown(seconds) + " s.png";
    }

    private static String shown(double seconds) {
        return String.format(Locale.ROOT, "%.3f", seconds);
    }

    private static PhotoFile described(PhotoFile frame, PhotoFile film, double seconds) {
        List<String> notes = List.of("A frame of the film " + film.name() + " (sha-256 " + film.sha256() + "), "
                + shown(seconds) + " s from its beginning; its time is the film's recorded time plus that moment.");
        return new PhotoFile(
                frame.name(),
                frame.stored(),
                frame.sha256(),
                frame.bytes(),
                frame.kind(),
                frame.type(),
                new MediaHeader(
                        film.captured().map(time -> later(time, seconds)),
                        Optional.empty(),
                        film.position(),
                        film.camera(),
                        frame.width(),
                        frame.height(),
                        frame.orientation(),
                        OptionalDouble.empty(),
                        Optional.of(KeptFrame.tie(film))),
                frame.sharpness(),
                notes,
                MediaFacts.NONE);
    }

    private static CaptureTime later(CaptureTime film, double seconds) {
        LocalDateTime time = TimeText.withFraction(film.time(), film.fraction())
                .plusNanos(Math.round(seconds * 1000) * NANOS_PER_MS);
        String fraction = String.format(Locale.ROOT, "%03d", time.get(ChronoField.MILLI_OF_SECOND));
        return new CaptureTime(time, fraction, film.offset(), film.source(), film.suspect());
    }
}
