package quarterlight.ui.kit.visit;

import java.nio.file.Path;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.visit.VisitFacts;

/** The drawing of a visit's car; takes a moment, so never on the event thread. */
final class DrawingOf {
    private DrawingOf() {}

    static OpenVisit.Drawing visit(Path folder, VisitFacts facts) throws DiagramRefused {
        BodyDiagram diagram = VisitDiagram.of(folder, facts);
        return new OpenVisit.Drawing(diagram, ZonePlaces.of(diagram));
    }

    /** The same sooner: the places of the zones are worked out when the diagram is drawn. */
    static OpenVisit.Drawing visitSoon(Path folder, VisitFacts facts) throws DiagramRefused {
        BodyDiagram diagram = VisitDiagram.of(folder, facts);
        return new OpenVisit.Drawing(diagram, ZonePlaces.whenAsked(diagram));
    }
}
