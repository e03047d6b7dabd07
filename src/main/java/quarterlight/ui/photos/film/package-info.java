/**
 * Answers: which moment of the film in hand is shown, and what is done with it?
 * <p>Uses the list of photos and ui.kit. Read {@link quarterlight.ui.photos.film.FilmDesk} first.
 *
 * <p>Decided in docs/decisions: 0102.
 */
package quarterlight.ui.photos.film;
