/**
 * Answers: what do the stamps, tags, labels and codes of the car say, and do they go with it?
 * <p>The Marks station. Read {@link quarterlight.ui.marks.MarksScreen} first.
 *
 * <p>Decided in docs/decisions: 0090.
 */
package quarterlight.ui.marks;
