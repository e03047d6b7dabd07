/**
 * Answers: which findings does each kind of evidence of a visit hold? One class per kind; each names the row of the rule that ranks it.
 * <p>Uses the findings, coverage, rust and the rule table. Read {@link quarterlight.matters.evidence.FoundFindings} first.
 *
 * <p>Decided in docs/decisions: 0288.
 */
package quarterlight.matters.evidence;
