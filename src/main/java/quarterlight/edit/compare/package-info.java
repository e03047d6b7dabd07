/**
 * Answers: how are several visits laid side by side, for the window and the command line alike, and how are their pages made?
 * <p>Uses the work on single visits. Read {@link quarterlight.edit.compare.ComparisonWork} first.
 */
package quarterlight.edit.compare;
