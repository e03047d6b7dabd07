/**
 * Where the spots of a panel lie beside each other and on it, and what they leave out. Knows points of views, outlines and areas;
 * read {@link quarterlight.finish.place.SpotNeighbors} and {@link quarterlight.finish.place.PatchPlaces} first.
 *
 * <p>Decided in docs/decisions: 0138, 0266.
 */
package quarterlight.finish.place;
