/**
 * Answers: what does the body diagram in the middle of the window show, and what does a click on it mean?
 * <p>Used by every station. Read {@link quarterlight.ui.diagram.DiagramPanel} first.
 *
 * <p>Decided in docs/decisions: 0055, 0117.
 */
package quarterlight.ui.diagram;
