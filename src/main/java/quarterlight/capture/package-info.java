/**
 * Answers: when was each photo really taken, which photos belong together, and how good is a picture?
 * <p>Uses values only; values in, values out. Read {@link quarterlight.capture.CorrectedTimes} first.
 *
 * <p>Decided in docs/decisions: 0036, 0083, 0160.
 */
package quarterlight.capture;
