/**
 * Answers: what matters about a car, how severe is it, what can hurt someone, how much was looked at, and what to look at next?
 * <p>Uses the findings and the rule table of {@code matters.rule}. Read {@link quarterlight.matters.Matters} first: it is what the
 * pages, the window, the comparison and the JSON show, all the same.
 *
 * <p>Decided in docs/decisions: 0191.
 */
package quarterlight.matters;
