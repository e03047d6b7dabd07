/**
 * Answers: in which words does a comparison speak? The window, the pages, the HTML, the command and the JSON take their sentences from here, so
 * that they never say two things.
 * <p>Uses the table of matters and the two cars in detail. Read {@link quarterlight.compare.said.ComparisonSheet} first.
 *
 * <p>Decided in docs/decisions: 0202.
 */
package quarterlight.compare.said;
