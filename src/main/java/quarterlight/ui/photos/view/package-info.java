/**
 * Answers: what does one photo look like from near, and what is drawn on it?
 * <p>Read {@link quarterlight.ui.photos.view.LargeView} first.
 */
package quarterlight.ui.photos.view;
