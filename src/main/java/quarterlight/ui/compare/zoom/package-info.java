/**
 * Answers: how are two photos of the same place zoomed and moved together?
 * <p>Knows pictures only. Read {@link quarterlight.ui.compare.zoom.SharedZoom} first.
 */
package quarterlight.ui.compare.zoom;
