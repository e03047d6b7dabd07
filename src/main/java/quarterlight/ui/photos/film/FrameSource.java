package quarterlight.ui.photos.film;

import java.nio.file.Path;
import quarterlight.photo.FilmFrame;
import quarterlight.photo.PictureUnreadable;

/** Where frames come from; a seam that tests replace. */
@FunctionalInterface
public interface FrameSource {
    FilmFrame at(Path film, double seconds) throws PictureUnreadable;
}
