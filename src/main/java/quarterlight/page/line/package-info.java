/**
 * Answers: how does the time line of a car look? One drawing for window and pages.
 * <p>Uses the marks and the typeface of the diagram. Read {@link quarterlight.page.line.TimeLineDrawing} first.
 */
package quarterlight.page.line;
