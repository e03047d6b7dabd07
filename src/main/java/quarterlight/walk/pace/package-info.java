/**
 * The pace of a walk, told by the gaps between its photos alone: how many photos a stop has and which gaps were moves. May use nothing but
 * values. Read {@link quarterlight.walk.pace.GapReading} first.
 *
 * <p>Decided in docs/decisions: 0137.
 */
package quarterlight.walk.pace;
