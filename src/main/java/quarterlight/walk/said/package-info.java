/**
 * What was said on the walk as evidence of where photos were taken; read {@link quarterlight.walk.said.SaidPlaces} first.
 *
 * <p>Decided in docs/decisions: 0248, 0254.
 */
package quarterlight.walk.said;
