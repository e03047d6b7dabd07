/**
 * Answers: what does the buyer get, and how does it look?
 * <p>The Pages station. Read {@link quarterlight.ui.pages.PagesScreen} first.
 */
package quarterlight.ui.pages;
