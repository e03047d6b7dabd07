package quarterlight.photo.worker;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Objects;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.film.FilmFrame;
import quarterlight.photo.originals.Original;
import quarterlight.photo.originals.OriginalRefused;
import quarterlight.visit.PhotoFile;

/** The pictures of one visit's originals, decoded by workers. Safe for several threads. */
public final class OriginalPictures {
    private final Path visitFolder;
    private final DecodingWorkers workers;

    public OriginalPictures(Path visitFolder, DecodingWorkers workers) {
        this.visitFolder = Objects.requireNonNull(visitFolder, "visitFolder");
        this.workers = Objects.requireNonNull(workers, "workers");
    }

    /** A photo, upright, in sRGB, its long side at most {@code longSide} pixels; of a film the frame that stands for it. */
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

    private Path file(PhotoFile photo) throws PictureUnreadable {
        try {
            return Original.of(visitFolder, photo);
        } catch (OriginalRefused e) {
            throw new PictureUnreadable(e.file(), e.reason(), e);
        }
    }
}
