/**
 * Answers: what evidence does the visit still lack, in the order of a walk round the car?
 * <p>Uses the values, the thickness statistics and the rust report. Read {@link quarterlight.coverage.Coverage} first.
 *
 * <p>Decided in docs/decisions: 0091, 0186.
 */
package quarterlight.coverage;
