package quarterlight.ui.diagram;

import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.visit.pin.ViewPoint;

/** Where an arrow key leads on the diagram: the nearest zone that lies more in that direction than across it. Pure functions. */
final class ZoneSteps {
    /** A zone as it stands in one view. */
    record Place(View view, ZoneId zone, ViewPoint point, Point2D px) {
        /** Half the side of the square that stands for a zone among those that are heard, px. */
        private static final int HEARD_PX = 12;

        Rectangle around() {
            return new Rectangle((int) px.getX() - HEARD_PX, (int) px.getY() - HEARD_PX, 2 * HEARD_PX, 2 * HEARD_PX);
        }
    }

    private ZoneSteps() {}

    /** Every zone of every view on the sheet. */
    static List<Place> places(DiagramScene scene, ZonePlaces places) {
        List<Place> all = new ArrayList<>();
        for (ViewDrawing view : scene.diagram().views()) {
            view.zones().stream()
                    .map(shape -> shape.zone().orElseThrow())
                    .distinct()
                    .forEach(zone -> places.pointFor(view, zone).ifPresent(point -> scene.px(point)
                            .ifPresent(px -> all.add(new Place(view.view(), zone, point, px)))));
        }
        return all;
    }

    /**
     * The next place in a direction.
     *
     * @param dx -1, 0 or 1: left or right
     * @param dy -1, 0 or 1: up or down
     */
    static Optional<Place> next(List<Place> places, Point2D from, int dx, int dy) {
        return places.stream()
                .filter(place -> along(place, from, dx, dy) > 2)
                .filter(place -> along(place, from, dx, dy) >= across(place, from, dx, dy))
                .min(Comparator.comparingDouble(place -> along(place, from, dx, dy) + 2 * across(place, from, dx, dy)));
    }

    private static double along(Place place, Point2D from, int dx, int dy) {
        return (place.px().getX() - from.getX()) * dx + (place.px().getY() - from.getY()) * dy;
    }

    private static double across(Place place, Point2D from, int dx, int dy) {
        return Math.abs((place.px().getX() - from.getX()) * dy)
                + Math.abs((place.px().getY() - from.getY()) * dx);
    }
}
