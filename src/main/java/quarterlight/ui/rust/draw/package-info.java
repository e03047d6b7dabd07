/**
 * Answers: how is an outline drawn on a photo, by pointer and by keys, with the scale beside it and the color share within it?
 * <p>Read {@link quarterlight.ui.rust.draw.RustModel} first, then {@link quarterlight.ui.rust.draw.TracePen}.
 *
 * <p>Decided in docs/decisions: 0097.
 */
package quarterlight.ui.rust.draw;
