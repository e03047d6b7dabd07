package quarterlight.photo.worker;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.SoundUnreadable;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.film.FilmFrame;
import quarterlight.photo.originals.Original;
import quarterlight.photo.originals.OriginalRefused;
import quarterlight.visit.photo.PhotoFile;

/** The pictures of one visit's originals, decoded by workers. Safe for several threads. */
public final class OriginalPictures {
    private final Path visitFolder;
    private final DecodingWorkers workers;

    public OriginalPictures(Path visitFolder, DecodingWorkers workers) {
        this.visitFolder = Objects.requireNonNull(visitFolder, "visitFolder");
        this.workers = Objects.requireNonNull(workers, "workers");
    }

    /** A photo, upright, in sRGB, its long side at most {@code longSide} pixels; of a film the frame that stands for it, of a paper its first page. */
    public BufferedImage upright(PhotoFile photo, int longSide) throws PictureUnreadable {
        Path file = file(photo);
        MediaType type = MediaType.ofWord(photo.type())
                .orElseThrow(() -> new PictureUnreadable(file, photo.type() + " cannot be shown here"));
        return workers.upright(file, type, photo.orientation(), longSide);
    }

    /** The frame of a film that is shown at a moment, upright, in sRGB. */
    public FilmFrame frame(PhotoFile film, double seconds) throws PictureUnreadable {
        return workers.frame(file(film), seconds);
    }

    /** Frames of a stretch of a film, small, to show it in motion. */
    public List<FilmFrame> stretch(PhotoFile film, double from, double seconds, double perSecond, int longSide)
            throws PictureUnreadable {
        return workers.stretch(file(film), from, seconds, perSecond, longSide);
    }

    /**
     * What is heard in a stretch of a film or memo, as {@link quarterlight.photo.film.SoundSpan} gives it.
     *
     * @throws SoundUnreadable if it cannot be decoded, in words that can follow its name and a colon
     */
    public Optional<byte[]> sound(PhotoFile film, double from, double seconds, double speed, int rate)
            throws SoundUnreadable {
        return heard(film, (file, type) -> workers.sound(file, type, from, seconds, speed, rate));
    }

    /** How loud a stretch is, as {@link quarterlight.photo.film.Loudness} gives it. */
    public Optional<byte[]> loudness(PhotoFile film, double from, double seconds) throws SoundUnreadable {
        return heard(film, (file, type) -> workers.loudness(file, type, from, seconds));
    }

    private interface Hearing {
        Optional<byte[]> of(Path file, MediaType type) throws WorkerLost, IOException;
    }

    private Optional<byte[]> heard(PhotoFile film, Hearing hearing) throws SoundUnreadable {
        try {
            MediaType type = MediaType.ofWord(film.type())
                    .orElseThrow(() -> new SoundUnreadable(film.name(), film.type() + " cannot be played here"));
            return hearing.of(file(film), type);
        } catch (WorkerLost e) {
            throw new SoundUnreadable(film.name(), e.reason());
        } catch (PictureUnreadable e) {
            throw new SoundUnreadable(film.name(), e.reason());
        } catch (IOException e) {
            throw new SoundUnreadable(film.name(), String.valueOf(e.getMessage()));
        }
    }

    /** A page of a paper by its number from 1, in sRGB, its long side at most {@code longSide} pixels. */
    public BufferedImage page(PhotoFile paper, int number, int longSide) throws PictureUnreadable {
        return workers.page(file(paper), number, longSide);
    }

    /** What a place within a photo, film or paper looks like: the photo itself, the frame at a moment, the page of a number. */
    public BufferedImage at(PhotoFile photo, OptionalDouble place, int longSide) throws PictureUnreadable {
        return switch (photo.kind()) {
            case FILM -> Pictures.fitted(frame(photo, place.orElse(0)).picture(), longSide);
            case PAPER -> page(photo, (int) place.orElse(1), longSide);
            default -> upright(photo, longSide);
        };
    }

    private Path file(PhotoFile photo) throws PictureUnreadable {
        try {
            return Original.of(visitFolder, photo);
        } catch (OriginalRefused e) {
            throw new PictureUnreadable(e.file(), e.reason(), e);
        }
    }
}
