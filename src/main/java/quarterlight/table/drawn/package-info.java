/**
 * Answers: how do outlines and notes that were drawn on photos go to other programs, and come back? As COCO, GeoJSON and Web Annotations; what a form has no
 * place for goes along in its own properties, so that nothing is lost.
 * <p>Uses the text of cells and the library for JSON. Read {@link quarterlight.table.drawn.DrawnRow} first.
 *
 * <p>Decided in docs/decisions: 0237.
 */
package quarterlight.table.drawn;
