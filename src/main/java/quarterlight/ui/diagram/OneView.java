package quarterlight.ui.diagram;

import java.awt.geom.Rectangle2D;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.View;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.scene.SheetLayout;

/** The layout that shows one view as large as the room allows. Pure functions. */
final class OneView {
    private static final double EDGE = 36;

    private OneView() {}

    /** Room for the legend below, px. */
    static double legendWidth(double width) {
        return width - EDGE;
    }

    /** @param band height of the legend, px; 0 for none */
    static Optional<SheetLayout> fit(BodyDiagram diagram, View view, double width, double height, double band) {
        return diagram.view(view).map(drawing -> {
            double room = Math.max(1, height - band);
            double scale = Math.max(
                    1e-3, Math.min((width - 2 * EDGE) / drawing.widthMm(), (room - 2 * EDGE) / drawing.heightMm()));
            double w = scale * drawing.widthMm();
            double h = scale * drawing.heightMm();
            return new SheetLayout(
                    width,
                    height,
                    scale,
                    Map.of(view, new Rectangle2D.Double((width - w) / 2, (room - h) / 2 + EDGE / 4, w, h)),
                    Map.of(view, new Rectangle2D.Double(0, 0, width, room)),
                    band > 0
                            ? Optional.of(new Rectangle2D.Double(EDGE / 2, room, legendWidth(width), band))
                            : Optional.empty(),
                    Optional.empty());
        });
    }
}
