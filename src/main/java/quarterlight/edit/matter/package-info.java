/**
 * Answers: how does the inspector set a severity of their own for something that matters, and take it back?
 * <p>Uses the store's edits of rows and the model of what matters. Read {@link quarterlight.edit.matter.MatterEdits} first.
 */
package quarterlight.edit.matter;
