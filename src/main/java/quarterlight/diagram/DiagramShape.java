package quarterlight.diagram;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.Construction;
import quarterlight.car.body.EnginePlace;

/**
 * One path of a view, in millimeters of the view, y down.
 *
 * @param id the id attribute, empty if it has none
 * @param zone the zone whose outline it is, for {@link ShapeKind#ZONE} only
 * @param path the curve as drawn; not to be changed
 * @param outline the same flattened
 * @param constructions the constructions it belongs to
 * @param engines the engine places it belongs to
 * @param driver whether it lies on the driver's side, drawn for a driver on the left
 * @param line where it stands in the file, from 1
 */
public record DiagramShape(
        ShapeKind kind,
        String id,
        Optional<ZoneId> zone,
        Path2D.Double path,
        ShapeOutline outline,
        Set<Construction> constructions,
        Set<EnginePlace> engines,
        boolean driver,
        int line) {
    public DiagramShape {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(outline, "outline");
        if (zone.isPresent() != (kind == ShapeKind.ZONE)) {
            throw new IllegalArgumentException("a zone outline names its zone, and nothing else does: " + id);
        }
        constructions = Set.copyOf(constructions);
        engines = Set.copyOf(engines);
    }

    /** The same shape carried over by a transform of the view. */
    public DiagramShape moved(AffineTransform by) {
        Path2D.Double there = new Path2D.Double(path, by);
        return new DiagramShape(kind, id, zone, there, ShapeOutline.of(there), constructions, engines, driver, line);
    }

    public boolean belongsTo(Body body) {
        return constructions.contains(body.construction()) && engines.contains(body.engine());
    }
}
