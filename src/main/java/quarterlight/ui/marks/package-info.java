/**
 * Answers: what do the stamps, tags, labels and codes of the car say, and do they go with it?
 * <p>The Marks station. Read {@link quarterlight.ui.marks.MarksScreen} first.
 */
package quarterlight.ui.marks;
