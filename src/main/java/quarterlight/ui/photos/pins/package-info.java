/**
 * Answers: how is a photo pinned to a zone with one or two key strokes, and what does the pin say?
 * <p>Read {@link quarterlight.ui.photos.pins.PinBox} first.
 */
package quarterlight.ui.photos.pins;
