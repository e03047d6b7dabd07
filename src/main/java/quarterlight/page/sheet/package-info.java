/**
 * Answers: what does an inspector take along to the car, on paper? One sheet made for the car of a visit, to be written on with a pencil.
 * <p>Uses the coverage, the body diagram and the page package. Read {@link quarterlight.page.sheet.TakeAlongSheet} first.
 *
 * <p>Decided in docs/decisions: 0181.
 */
package quarterlight.page.sheet;
