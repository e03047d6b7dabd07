/**
 * Answers: what does one photo look like from near, and what lies above it?
 * <p>Shared by the screens that draw on photos. Read {@link quarterlight.ui.kit.view.PhotoCanvas} first.
 *
 * <p>Decided in docs/decisions: 0096.
 */
package quarterlight.ui.kit.view;
