package quarterlight.ui.kit;

import quarterlight.car.Car;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.DiagramFile;
import quarterlight.diagram.DiagramRefused;
import quarterlight.diagram.ZonePlaces;

/** The drawing of a car; takes a moment, so never on the event thread. */
final class DrawingOf {
    private DrawingOf() {}

    static OpenVisit.Drawing car(Car car) throws DiagramRefused {
        BodyDiagram diagram = DiagramFile.shipped(car.body());
        return new OpenVisit.Drawing(diagram, ZonePlaces.of(diagram));
    }
}
