/**
 * Answers: which frame does a film show at a moment?
 * <p>Uses ffmpeg and {@code photo.pixels}. Read {@link quarterlight.photo.film.FilmFrames} first.
 */
package quarterlight.photo.film;
