/**
 * Answers: which camera's clock was wrong, and by how much?
 * <p>Read {@link quarterlight.ui.photos.clock.ClockPanel} first.
 */
package quarterlight.ui.photos.clock;
