/**
 * Answers: what does a photo of the visit look like on a page? Notes drawn onto it, hidden regions taken out of it.
 * <p>Uses Java2D and the geometry of {@link quarterlight.rust.plane}; decodes nothing. Read PhotoNotePainter first.
 *
 * <p>Decided in docs/decisions: 0051, 0052.
 */
package quarterlight.page.photo;
