package quarterlight.diagram;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.car.View;
import quarterlight.thickness.spot.PointDistance;
import quarterlight.visit.pin.ViewPoint;

/** Distances on the body by the scale of its diagram; along the surface they are longer where it turns away from the view. */
public final class ViewScale implements PointDistance {
    private final BodyDiagram diagram;

    public ViewScale(BodyDiagram diagram) {
        this.diagram = Objects.requireNonNull(diagram, "diagram");
    }

    @Override
    public OptionalDouble mm(ViewPoint a, ViewPoint b) {
        View view = a.view();
        Optional<ViewDrawing> drawing = view == b.view() ? diagram.view(view) : Optional.empty();
        return drawing.map(d ->
                        OptionalDouble.of(Math.hypot((a.x() - b.x()) * d.widthMm(), (a.y() - b.y()) * d.heightMm())))
                .orElse(OptionalDouble.empty());
    }
}
