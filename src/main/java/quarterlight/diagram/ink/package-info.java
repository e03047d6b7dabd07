/**
 * Answers: how does the body diagram look with this car's numbers on it, in a window and on a page?
 * <p>What is to be seen is told by DiagramInk; DiagramScene lays it out once,
 * and two renderers draw the scene: Java2D for the window, SVG text for pages. Read DiagramInk first.
 *
 * <p>Decided in docs/decisions: 0017, 0057, 0082.
 */
package quarterlight.diagram.ink;
