/**
 * Answers: what is to be said of the car, what was tried, and what is still lacking before leaving?
 * <p>The Notes station. Read {@link quarterlight.ui.notes.NotesScreen} first.
 */
package quarterlight.ui.notes;
