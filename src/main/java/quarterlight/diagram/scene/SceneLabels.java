package quarterlight.diagram.scene;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import quarterlight.car.ZoneId;
import quarterlight.diagram.DiagramShape;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.LetterMark;
import quarterlight.diagram.ink.SceneColors;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.diagram.place.LabelPlacement;

/** The labels of one view: finds what to write, places it and draws it. */
final class SceneLabels {
    /** Size of numbers and labels, px; the same at every scale. */
    static final double SIZE = 11;

    private static final int GRID = 7;

    private final ViewDrawing view;
    private final ZonePlaces places;
    private final Rectangle2D frame;
    private final double scale;
    private final DiagramInk ink;
    private final SceneColors colors;
    private final TextMeasure measure;
    private final NameKey key;

    SceneLabels(
            ViewDrawing view,
            ZonePlaces places,
            Rectangle2D frame,
            double scale,
            DiagramInk ink,
            SceneColors colors,
            TextMeasure measure,
            NameKey key) {
        this.key = key;
        this.view = view;
        this.places = places;
        this.frame = frame;
        this.scale = scale;
        this.ink = ink;
        this.colors = colors;
        this.measure = measure;
    }

    /** The placed labels of the view. */
    List<LabelPlacement.Placed> place(LabelPlacement.Room room) {
        List<LabelPlacement.Wish> wishes = new ArrayList<>();
        Set<ZoneId> asked = new HashSet<>();
        for (DiagramShape shape : view.zones()) {
            ZoneId zone = shape.zone().orElseThrow();
            String text = ink.textOf(zone);
            if (!text.isEmpty() && asked.add(zone)) {
                places.place(view.view(), zone).ifPresent(place -> wishes.add(wish(zone, text, place)));
            }
        }
        wishes.sort((a, b) -> Double.compare(radius(b), radius(a)));
        return LabelPlacement.place(wishes, room, List.of());
    }

    /** The letters of matters in their squares, beside the labels that stand. */
    List<LabelPlacement.Placed> letters(
            List<LetterMark> letters, LabelPlacement.Room room, List<LabelPlacement.Placed> labels) {
        List<LabelPlacement.Wish> wishes = new ArrayList<>();
        for (LetterMark mark : letters) {
            places.place(view.view(), mark.zone())
                    .ifPresent(place -> wishes.add(new LabelPlacement.Wish(
                            mark.zone(),
                            mark.letter(),
                            px(place.xMm(), place.yMm()),
                            LetterDrawing.SIDE,
                            LetterDrawing.SIDE,
                            spots(place),
                            inside(place),
                            Optional.empty(),
                            false)));
        }
        return LabelPlacement.place(wishes, room, labels);
    }

    private double radius(LabelPlacement.Wish wish) {
        return places.place(view.view(), wish.zone())
                .map(ZonePlaces.Place::radiusMm)
                .orElse(0.0);
    }

    private LabelPlacement.Wish wish(ZoneId zone, String text, ZonePlaces.Place place) {
        return new LabelPlacement.Wish(
                zone,
                text,
                px(place.xMm(), place.yMm()),
                measure.width(text, SIZE, true),
                SIZE,
                spots(place),
                inside(place),
                key.numberOf(zone)
                        .map(number -> new LabelPlacement.Shorter(
                                number, measure.width(number, NameKey.NUMBER_SIZE, true), NameKey.NUMBER_SIZE - 1)),
                !ink.isNamed(zone));
    }

    /** Where to try inside the zone: its middle, then a grid, nearest first. */
    private List<Point2D> spots(ZonePlaces.Place place) {
        Point2D anchor = px(place.xMm(), place.yMm());
        List<Point2D> spots = new ArrayList<>(List.of(anchor));
        Rectangle2D box = place.seen().box();
        for (int i = 1; i < GRID; i++) {
            for (int j = 1; j < GRID; j++) {
                spots.add(px(box.getMinX() + box.getWidth() * i / GRID, box.getMinY() + box.getHeight() * j / GRID));
            }
        }
        spots.subList(1, spots.size()).sort((a, b) -> Double.compare(a.distanceSq(anchor), b.distanceSq(anchor)));
        return spots;
    }

    private Predicate<Rectangle2D> inside(ZonePlaces.Place place) {
        return r -> place.seen()
                .covers(new Rectangle2D.Double(
                        mmX(r.getMinX()),
                        mmY(r.getMinY()),
                        mmX(r.getMaxX()) - mmX(r.getMinX()),
                        mmY(r.getMaxY()) - mmY(r.getMinY())));
    }

    /** Draws placed labels: leaders first, then the words. */
    List<DrawnItem> draw(List<LabelPlacement.Placed> labels) {
        List<DrawnItem> drawn = new ArrayList<>();
        labels.forEach(label -> drawn.addAll(leader(label, colors.palette().secondInk())));
        for (LabelPlacement.Placed label : labels) {
            ZoneLook look = ink.lookOf(label.zone());
            boolean onTexture = label.inside() && look.isTextured();
            Color ground = label.inside() ? colors.fill(look) : colors.palette().ground();
            if (onTexture || !label.inside()) {
                Rectangle2D box = DrawnItem.grown(label.box(), 2);
                drawn.add(DrawnItem.Filled.of(
                        new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), 4, 4),
                        ground));
            }
            Rectangle2D box = label.box();
            double size = isNumber(label) ? NameKey.NUMBER_SIZE : SIZE;
            drawn.add(new DrawnItem.Words(
                    label.text(),
                    box.getX(),
                    box.getCenterY() + 0.35 * size,
                    size,
                    true,
                    colors.textOn(ground),
                    box.getWidth()));
        }
        return drawn;
    }

    /** The line from a label outside to its zone, with a dot there; nothing for one inside. */
    static List<DrawnItem> leader(LabelPlacement.Placed label, Color color) {
        Point2D end = label.anchor();
        return label.inside()
                ? List.of()
                : List.of(
                        DrawnItem.Stroked.of(new Line2D.Double(label.leaderStart(), end), color, 0.6),
                        DrawnItem.Filled.of(new Ellipse2D.Double(end.getX() - 1.5, end.getY() - 1.5, 3, 3), color));
    }

    /** Whether a number that the key explains stands for the words of the zone. */
    boolean isNumber(LabelPlacement.Placed label) {
        return !label.text().equals(ink.textOf(label.zone()));
    }

    private Point2D px(double xMm, double yMm) {
        return new Point2D.Double(frame.getX() + xMm * scale, frame.getY() + yMm * scale);
    }

    private double mmX(double px) {
        return (px - frame.getX()) / scale;
    }

    private double mmY(double px) {
        return (px - frame.getY()) / scale;
    }
}
