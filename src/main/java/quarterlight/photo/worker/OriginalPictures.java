package quarterlight.photo.worker;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Objects;
import java.util.OptionalDouble;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
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
