/**
 * Where the spots of a panel lie beside each other. Knows points of views and nothing else; read
 * {@link quarterlight.finish.place.SpotNeighbors} first.
 *
 * <p>Decided in docs/decisions: 0138.
 */
package quarterlight.finish.place;
