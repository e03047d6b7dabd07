/**
 * Answers: what does one cell of a row mean, as a number, a moment, a zone, a photo, an outline or a scale?
 * <p>Uses the values and the geometry library's text format. Read {@link quarterlight.table.cell.Cells} first.
 *
 * <p>Decided in docs/decisions: 0153, 0155.
 */
package quarterlight.table.cell;
