package quarterlight.ui.photos.film;

import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.film.FilmFrame;
import quarterlight.visit.photo.PhotoFile;

/** Where frames come from; a seam that tests replace. */
@FunctionalInterface
public interface FrameSource {
    FilmFrame at(PhotoFile film, double seconds) throws PictureUnreadable;
}
