/**
 * Where values, letters and discs stand on a sheet, so that none covers another. Rectangles in, rectangles out; read
 * {@link quarterlight.diagram.place.LabelPlacement} first.
 */
package quarterlight.diagram.place;
