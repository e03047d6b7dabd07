/**
 * Answers: how large is an outline drawn on a photo, in mm2, given something of known size on the same photo; how sure
 * is that; and which outlines cannot be measured at all?
 * <p>Uses the values and the geometry library. Read {@link quarterlight.rust.plane.PhotoPlane} first.
 *
 * <p>Decided in docs/decisions: 0157.
 */
package quarterlight.rust.plane;
