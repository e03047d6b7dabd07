/**
 * Answers: what is a thickness, a length, an area, and how is a closed list of words read?
 * <p>Uses the JDK only. Read {@link quarterlight.units.Thickness} first.
 */
package quarterlight.units;
