/**
 * Answers: when was each photo really taken, which photos belong together, and how good is a picture?
 * <p>Uses values only; values in, values out. Read {@link quarterlight.capture.CorrectedTimes} first.
 */
package quarterlight.capture;
