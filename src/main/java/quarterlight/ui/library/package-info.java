/**
 * Answers: which of all my visits says this, and what does it look like there?
 * <p>A window of its own beside the one of a visit. What is shown comes from {@link quarterlight.edit.library}; visits are only read. Read
 * {@code LibraryWindow} first.
 *
 * <p>Decided in docs/decisions: 0263.
 */
package quarterlight.ui.library;
