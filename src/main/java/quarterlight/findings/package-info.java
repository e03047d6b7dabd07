/**
 * Answers: what has been worked out of one visit? All results in one record, so that a number shown in two places is the same.
 * <p>Uses the other science packages. Read {@link quarterlight.findings.Findings} first.
 *
 * <p>Decided in docs/decisions: 0002.
 */
package quarterlight.findings;
