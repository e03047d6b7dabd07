/**
 * Answers: what can a user do to a visit? One class per family of edits; each call is one transaction and one undo step,
 * the same for a command and for the window.
 * <p>Uses the adapters, the science and the values. Read {@link quarterlight.edit.fact.FactEdits} first.
 *
 * <p>Decided in docs/decisions: 0056, 0078, 0104.
 */
package quarterlight.edit;
