/**
 * Answers: how likely is each history of each panel's finish, given readings, signs and rust, and what moved it?
 * <p>An aid to a trained eye, never proof. Uses the values, {@code thickness} and {@code rust}. Read
 * {@link quarterlight.finish.FinishHistory} first; the method is in docs/methods/finish-history.md.
 *
 * <p>Decided in docs/decisions: 0139, 0140, 0141.
 */
package quarterlight.finish;
