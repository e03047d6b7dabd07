package quarterlight.diagram.scene;

import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ZoneHits;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.SceneColors;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.place.PinPlacement;
import quarterlight.visit.pin.ViewPoint;

/**
 * A diagram laid out with everything on it, in px of the sheet: what both renderers draw and what the mouse hits. Immutable; made again
 * when the room, the values or the colors change, not when the mouse moves.
 */
public final class DiagramScene {
    /** How far from an outline a hit still counts, px. */
    public static final double HIT_PX = 6;

    private final BodyDiagram diagram;
    private final SheetLayout layout;
    private final DiagramInk ink;
    private final InkPalette palette;
    private final TextMeasure measure;
    private final List<ViewScene> views = new ArrayList<>();
    private final List<DrawnItem> legend;
    private final NameKey nameKey;
    private final List<DrawnItem> key;
    private final List<Rectangle2D> taken;

    private static final int MAX_FITS = 4;
    private static final double MAX_KEY = 0.5;

    /** What lies under a point of the sheet. */
    public record Hit(ViewPoint point, Optional<ZoneId> zone) {}

    /**
     * @param places of the same diagram; compute once, on a background thread
     * @param ramp of the quantities
     */
    public DiagramScene(
            BodyDiagram diagram,
            ZonePlaces places,
            SheetLayout layout,
            DiagramInk ink,
            InkPalette palette,
            Ramp ramp,
            TextMeasure measure) {
        this.diagram = diagram;
        this.layout = layout;
        this.ink = ink;
        this.palette = palette;
        this.measure = measure;
        SceneColors colors = new SceneColors(palette, ramp);
        nameKey = new NameKey(diagram, ink);
        ViewComposer composer = new ViewComposer(places, layout, ink, colors, measure, nameKey);
        for (ViewDrawing view : diagram.views()) {
            if (layout.frames().containsKey(view.view())) {
                views.add(composer.compose(view));
            }
        }
        taken = views.stream().flatMap(view -> view.taken().stream()).toList();
        legend = ink.legend().isPresent() && layout.legend().isPresent()
                ? LegendDrawing.draw(ink.legend().get(), layout.legend().get(), colors, measure)
                : List.of();
        key = layout.key()
                .map(band -> nameKey.draw(numbered(), ink, band, palette, measure))
                .orElse(List.of());
    }

    /**
     * The scene that fills a room, with a key below it of the zones that bear a number because their words found no place. Where the key
     * would leave the drawing less than half of the room, the sheet comes out higher than the room.
     *
     * @param legend whether the sheet keeps a band for the legend
     */
    public static DiagramScene fitted(
            BodyDiagram diagram,
            ZonePlaces places,
            double width,
            double height,
            boolean legend,
            DiagramInk ink,
            InkPalette palette,
            Ramp ramp,
            TextMeasure measure) {
        double band = legend ? SheetLayout.legendHeight(ink.legend(), width - 2 * SheetLayout.BESIDE, measure) : 0;
        double keyHeight = 0;
        for (int i = 0; ; i++) {
            SheetLayout layout = SheetLayout.fit(diagram, width, height - Math.min(keyHeight, MAX_KEY * height), band)
                    .withKey(keyHeight);
            DiagramScene scene = new DiagramScene(diagram, places, layout, ink, palette, ramp, measure);
            double wanted = NameKey.height(scene.numbered(), ink, width - 2 * SheetLayout.BESIDE, measure);
            if (wanted <= keyHeight || i == MAX_FITS) {
                return scene;
            }
            keyHeight = wanted;
        }
    }

    /** The point of a view under a point of the sheet and the zone it means; empty outside all views. */
    public Optional<Hit> hit(double xPx, double yPx) {
        for (ViewDrawing view : diagram.views()) {
            Rectangle2D frame = layout.frames().get(view.view());
            if (frame != null && DrawnItem.grown(frame, HIT_PX).contains(xPx, yPx)) {
                double x = (xPx - frame.getX()) / frame.getWidth();
                double y = (yPx - frame.getY()) / frame.getHeight();
                ViewPoint point = new ViewPoint(view.view(), Math.min(1, Math.max(0, x)), Math.min(1, Math.max(0, y)));
                return Optional.of(new Hit(
                        point, ZoneHits.at(view, x * view.widthMm(), y * view.heightMm(), HIT_PX / layout.scale())));
            }
        }
        return Optional.empty();
    }

    /** What values, letters and titles take up, px: a disc that is laid out apart stays off it. */
    public List<Rectangle2D> taken() {
        return taken;
    }

    /** Where a leader that comes from a disc ends, so that it crosses no value; empty if it cannot leave the disc. */
    public Optional<Point2D> visibleTip(Point2D tip, Point2D center) {
        return DiscDrawing.visibleTip(tip, center, taken());
    }

    /** Where the discs and letters stand, px, so that a page can lay links over them. */
    public List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        for (ViewScene view : views) {
            double r = PinPlacement.DISC / 2;
            view.pins()
                    .forEach(pin -> spots.add(new Spot(
                            Spot.Kind.PHOTO,
                            view.marks().get(pin.number()).number(),
                            new Rectangle2D.Double(
                                    pin.center().getX() - r, pin.center().getY() - r, 2 * r, 2 * r))));
            view.letters().forEach(letter -> spots.add(new Spot(Spot.Kind.MATTER, letter.text(), letter.box())));
        }
        return spots;
    }

    /** A disc or letter on the sheet. */
    public record Spot(Kind kind, String text, Rectangle2D box) {
        /** What it stands for. */
        public enum Kind {
            PHOTO,
            MATTER
        }
    }

    /** Numbers of pins that found no room for a disc; to be told in a list instead. */
    public Set<String> undrawn() {
        return views.stream().flatMap(view -> view.undrawn().stream()).collect(Collectors.toUnmodifiableSet());
    }

    /** The view whose cell holds a point of the sheet. */
    public Optional<View> viewAt(double xPx, double yPx) {
        return views.stream()
                .filter(view -> view.cell().contains(xPx, yPx))
                .map(ViewScene::view)
                .findFirst();
    }

    /** Where a point of a view lies on the sheet, px; empty if the view is not on it. */
    public Optional<Point2D> px(ViewPoint point) {
        return Optional.ofNullable(layout.frames().get(point.view()))
                .map(frame -> new Point2D.Double(
                        frame.getX() + point.x() * frame.getWidth(), frame.getY() + point.y() * frame.getHeight()));
    }

    /** The outlines of a zone on the sheet, px; none if it is not drawn. Not to be changed. */
    public List<Shape> outlinesOf(ZoneId zone) {
        return views.stream()
                .flatMap(view -> view.outlines().getOrDefault(zone, List.of()).stream())
                .toList();
    }

    /** Zones whose label found no place in some view; to be told in a table instead. */
    public Set<ZoneId> unlabeled() {
        return views.stream().flatMap(view -> view.unlabeled().stream()).collect(Collectors.toUnmodifiableSet());
    }

    /** Zones that bear a number in some view, by number. */
    List<ZoneId> numbered() {
        return diagram.zones().stream()
                .filter(zone -> views.stream().anyMatch(view -> view.numbered().contains(zone)))
                .toList();
    }

    public SheetLayout layout() {
        return layout;
    }

    public BodyDiagram diagram() {
        return diagram;
    }

    public DiagramInk ink() {
        return ink;
    }

    InkPalette palette() {
        return palette;
    }

    TextMeasure measure() {
        return measure;
    }

    List<ViewScene> views() {
        return views;
    }

    List<DrawnItem> key() {
        return key;
    }

    List<DrawnItem> legend() {
        return legend;
    }
}
