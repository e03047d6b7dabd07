/**
 * Answers: what is drawn on the body diagram of this car, which zone is at this point, which zones are neighbors and how large are they?
 * <p>One SVG file per body style is read into outlines in millimeters; painting them is the business of {@link quarterlight.diagram.ink}.
 * Uses car, visit and units, Batik's path parser and JTS. Read {@link quarterlight.diagram.BodyDiagram} first.
 *
 * <p>Decided in docs/decisions: 0015, 0154.
 */
package quarterlight.diagram;
