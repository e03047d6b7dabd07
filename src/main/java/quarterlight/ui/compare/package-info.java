/**
 * Answers: how do candidate cars stand side by side?
 * <p>The second window. All its words come from the sheet of the comparison, as those of the pages do. Read
 * {@link quarterlight.ui.compare.CarsWindow} first.
 */
package quarterlight.ui.compare;
