/**
 * Answers: does each mark fit the car, do its numbers match, what order of dates follows, and which features do not belong?
 * <p>The codes themselves are read in {@link quarterlight.marks.code}, the order is worked out in {@link quarterlight.marks.order}.
 * Read {@link quarterlight.marks.MarksReport} first.
 */
package quarterlight.marks;
