/**
 * Answers: with one hour more at a car of a comparison, which single looks or readings would change most?
 * <p>Uses the table of matters, the car's own list of what to look at next and the finish model. Read
 * {@link quarterlight.compare.hour.OneHour} first.
 */
package quarterlight.compare.hour;
