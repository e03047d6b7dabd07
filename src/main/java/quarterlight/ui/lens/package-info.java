/**
 * Answers: what does this number, verdict or sentence rest on, and where does that stand?
 * <p>The grounds of a zone, a row or a matter, one by one, each with its rows and its photo. Read {@link quarterlight.ui.lens.Grounds}
 * first. Uses values, findings, matters and the kit.
 *
 * <p>Decided in docs/decisions: 0221.
 */
package quarterlight.ui.lens;
