/**
 * Answers: which days are left for each event if one must come before the other, and where is there no day left?
 * <p>Knows no marks and no cars, only sets of days and their distances. Read {@link quarterlight.marks.order.OrderOfDays} first.
 *
 * <p>Decided in docs/decisions: 0061.
 */
package quarterlight.marks.order;
