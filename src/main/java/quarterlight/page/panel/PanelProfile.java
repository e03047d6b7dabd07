package quarterlight.page.panel;

import static quarterlight.language.Sentences.say;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.DiagramShape;
import quarterlight.diagram.ViewDrawing;
import quarterlight.findings.Findings;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.thickness.spot.Spot;
import quarterlight.thickness.spot.SpotKind;
import quarterlight.thickness.statistics.Outlier;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/**
 * A panel with the places where the gauge stood: its outline in the view that has most of them, and the coating at each. Immutable.
 *
 * <p>Along the panel runs the horizontal of the view, or its vertical where the panel is much taller than wide there.
 *
 * @param view the view that has most of the places
 * @param viewTitle its name for readers
 * @param outlines of the panel in mm of the view; not to be changed
 * @param points spots with a place in this view, in the order taken, and excluded readings
 * @param elsewhere spots without a place in this view
 * @param levelUm the car's factory level as estimated, um
 * @param levelSdUm its standard deviation
 */
public record PanelProfile(
        View view,
        String viewTitle,
        List<Path2D.Double> outlines,
        List<Point> points,
        List<Point> elsewhere,
        double levelUm,
        double levelSdUm) {
    /** From this height over width on, a panel is turned. */
    private static final double UPRIGHT = 1.3;

    /**
     * What the gauge found at one place.
     *
     * @param xMm in the view, from its left; 0 if the place is not known
     * @param um empty where it found no metal or was beyond its range
     * @param excluded true for a reading that takes no part
     * @param outlier true for a spot that stands apart from the others
     */
    public record Point(double xMm, double yMm, SpotKind kind, OptionalDouble um, boolean excluded, boolean outlier) {
        private Point turned() {
            return new Point(yMm, -xMm, kind, um, excluded, outlier);
        }
    }

    public PanelProfile {
        outlines = List.copyOf(outlines);
        points = List.copyOf(points);
        elsewhere = List.copyOf(elsewhere);
    }

    /** The profile of a zone, if the gauge can read it and the place of one spot at least is known. */
    public static Optional<PanelProfile> of(Findings car, BodyDiagram diagram, ZoneId zone) {
        Optional<ZoneThickness> thickness = car.thickness().zone(zone).filter(ZoneThickness::readable);
        return thickness.flatMap(found -> new Gathering(car, diagram, found).profile());
    }

    /** Left and right end of the panel in the view, mm. */
    public double fromMm() {
        return bounds().getMinX();
    }

    public double toMm() {
        return bounds().getMaxX();
    }

    /** What holds the outline and all points. */
    public Rectangle2D bounds() {
        Rectangle2D all =
                new Rectangle2D.Double(points.get(0).xMm(), points.get(0).yMm(), 0, 0);
        points.forEach(point -> all.add(point.xMm(), point.yMm()));
        outlines.forEach(outline -> all.add(outline.getBounds2D()));
        return all;
    }

    /** A quarter turn, so that a panel which is taller than wide in its view lies along the drawing. */
    private PanelProfile turned() {
        AffineTransform quarter = new AffineTransform(0, -1, 1, 0, 0, 0);
        return new PanelProfile(
                view,
                say("diagram.panel-profile.turned", viewTitle),
                outlines.stream()
                        .map(outline -> new Path2D.Double(outline, quarter))
                        .toList(),
                points.stream().map(Point::turned).toList(),
                elsewhere,
                levelUm,
                levelSdUm);
    }

    /** Sorts spots by the view in which they have a place. */
    private static final class Gathering {
        private final Findings car;
        private final BodyDiagram diagram;
        private final ZoneThickness thickness;
        private final Map<RecordId, Reading> rows = new LinkedHashMap<>();

        Gathering(Findings car, BodyDiagram diagram, ZoneThickness thickness) {
            this.car = car;
            this.diagram = diagram;
            this.thickness = thickness;
            for (Recorded<Reading> row : car.visit().readings()) {
                if (row.value().zone().equals(thickness.zone())) {
                    rows.put(row.id(), row.value());
                }
            }
        }

        Optional<PanelProfile> profile() {
            Map<View, Integer> counts = new EnumMap<>(View.class);
            thickness.spots().forEach(spot -> place(spot).ifPresent(at -> counts.merge(at.view(), 1, Integer::sum)));
            return counts.entrySet().stream()
                    .filter(entry -> diagram.view(entry.getKey()).isPresent())
                    .max(Map.Entry.comparingByValue())
                    .map(entry -> profile(diagram.view(entry.getKey()).orElseThrow()));
        }

        private Optional<ViewPoint> place(Spot spot) {
            return spot.readings().stream()
                    .map(rows::get)
                    .flatMap(reading -> reading.point().stream())
                    .findFirst();
        }

        private PanelProfile profile(ViewDrawing view) {
            List<Point> points = new ArrayList<>();
            List<Point> elsewhere = new ArrayList<>();
            for (Spot spot : thickness.spots()) {
                Optional<ViewPoint> at = place(spot).filter(point -> point.view() == view.view());
                (at.isPresent() ? points : elsewhere)
                        .add(point(view, at, spot.kind(), spot.um(), false, isOutlier(spot)));
            }
            for (Reading reading : rows.values()) {
                Optional<ViewPoint> at = reading.point().filter(point -> point.view() == view.view());
                if (reading.exclude().isPresent() && at.isPresent()) {
                    points.add(point(view, at, kind(reading.value()), um(reading.value()), true, false));
                }
            }
            List<Path2D.Double> outlines = view.outlinesOf(thickness.zone()).stream()
                    .map(DiagramShape::path)
                    .toList();
            PanelProfile straight = new PanelProfile(
                    view.view(),
                    view.title(),
                    outlines,
                    points,
                    elsewhere,
                    car.history().carLevel().um(),
                    car.history().carLevelSd().um());
            Rectangle2D bounds = straight.bounds();
            return bounds.getHeight() > UPRIGHT * bounds.getWidth() ? straight.turned() : straight;
        }

        private static Point point(
                ViewDrawing view,
                Optional<ViewPoint> at,
                SpotKind kind,
                OptionalDouble um,
                boolean excluded,
                boolean outlier) {
            return new Point(
                    at.map(point -> point.x() * view.widthMm()).orElse(0.0),
                    at.map(point -> point.y() * view.heightMm()).orElse(0.0),
                    kind,
                    um,
                    excluded,
                    outlier);
        }

        private boolean isOutlier(Spot spot) {
            return spot.um().isPresent()
                    && thickness.outliers().stream()
                            .mapToDouble(Outlier::um)
                            .anyMatch(um -> um == spot.um().getAsDouble());
        }

        private static SpotKind kind(GaugeValue value) {
            if (value instanceof GaugeValue.Measured) {
                return SpotKind.VALUE;
            }
            return value instanceof GaugeValue.NoMetal ? SpotKind.NO_METAL : SpotKind.OVER;
        }

        private OptionalDouble um(GaugeValue value) {
            GaugeCorrection correction = car.thickness().correction();
            return value instanceof GaugeValue.Measured measured
                    ? OptionalDouble.of(correction.apply(measured.thickness()).um())
                    : OptionalDouble.empty();
        }
    }
}
