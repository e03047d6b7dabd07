/**
 * Answers: how much of each zone is rusted, from outlines traced on photos; which grade is that; what does the zone need;
 * and how much of a region looks like rust by its color?
 * <p>Uses the values, its own {@code plane} and the geometry library. Read {@link quarterlight.rust.RustReport} first.
 *
 * <p>Decided in docs/decisions: 0025, 0026, 0158, 0159.
 */
package quarterlight.rust;
