/**
 * Answers: what dates can a stamp, tag, label, tire or identity number mean, and does the part fit the car?
 * <p>Uses {@link quarterlight.car} and {@link quarterlight.visit}. Read {@link quarterlight.marks.DatePattern} first.
 */
package quarterlight.marks;
