package quarterlight.ui.photos.film;

import java.nio.file.Path;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.film.FilmFrame;

/** Where frames come from; a seam that tests replace. */
@FunctionalInterface
public interface FrameSource {
    FilmFrame at(Path film, double seconds) throws PictureUnreadable;
}
