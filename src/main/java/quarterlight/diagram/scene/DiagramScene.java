package quarterlight.diagram.scene;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.DiagramShape;
import quarterlight.diagram.ShapeKind;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ZoneHits;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.Contrast;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.SceneColors;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.ZoneLook;
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
    private final List<SceneView> views = new ArrayList<>();
    private final List<Drawn> legend;
    private final Map<ZoneId, List<Shape>> outlines = new HashMap<>();
    private final Set<ZoneId> unlabeled = new LinkedHashSet<>();
    private final Set<ZoneId> numbered = new LinkedHashSet<>();
    private final NameKey nameKey;
    private final List<Drawn> key;

    private static final int MAX_FITS = 4;
    private static final double MAX_KEY = 0.5;

    /** What is drawn of one view, in order, and its pins. */
    record SceneView(View view, String title, Rectangle2D cell, List<Drawn> drawn, List<PinPlacement.Placed> pins) {}

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
        for (ViewDrawing view : diagram.views()) {
            if (layout.frames().containsKey(view.view())) {
                views.add(compose(view, places, colors));
            }
        }
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
        double keyHeight = 0;
        for (int i = 0; ; i++) {
            SheetLayout layout = SheetLayout.fit(diagram, width, height - Math.min(keyHeight, MAX_KEY * height), legend)
                    .withKey(keyHeight);
            DiagramScene scene = new DiagramScene(diagram, places, layout, ink, palette, ramp, measure);
            double wanted = NameKey.height(scene.numbered(), ink, width - 2 * SheetLayout.BESIDE, measure);
            if (wanted <= keyHeight || i == MAX_FITS) {
                return scene;
            }
            keyHeight = wanted;
        }
    }

    private SceneView compose(ViewDrawing view, ZonePlaces places, SceneColors colors) {
        Rectangle2D frame = layout.frames().get(view.view());
        Rectangle2D cell = layout.cells().get(view.view());
        AffineTransform toPx = AffineTransform.getTranslateInstance(frame.getX(), frame.getY());
        toPx.scale(layout.scale(), layout.scale());
        List<Drawn> drawn = new ArrayList<>();
        double titleWidth = measure.width(view.title(), SceneLabels.SIZE, false);
        Drawn.Words title = new Drawn.Words(
                view.title(),
                frame.getX(),
                Math.max(cell.getY() + 13, frame.getY() - 20),
                SceneLabels.SIZE,
                false,
                palette.secondInk(),
                titleWidth);
        drawn.add(title);
        List<Drawn> silhouettes = new ArrayList<>();
        Pending zone = Pending.NONE;
        for (DiagramShape shape : view.shapes()) {
            Path2D px = Simpler.path(new Path2D.Double(shape.path(), toPx));
            if (shape.kind() == ShapeKind.SILHOUETTE) {
                silhouettes.add(Drawn.Stroked.of(px, palette.silhouette(), 1.6));
            } else if (shape.zone().isPresent()) {
                drawn.addAll(zone.textures());
                zone = zone(shape.zone().get(), px, colors, drawn);
            } else {
                detail(shape.kind(), px, zone.fill(), drawn);
            }
        }
        drawn.addAll(zone.textures());
        drawn.addAll(silhouettes);
        SceneLabels labels = new SceneLabels(view, places, frame, layout.scale(), ink, colors, measure, nameKey);
        List<LabelPlacement.Placed> placed = labels.place(cell, title.bounds());
        noteUnlabeled(view, placed);
        placed.stream().filter(labels::isNumber).forEach(label -> numbered.add(label.zone()));
        drawn.addAll(labels.draw(placed));
        List<PinPlacement.Placed> pins = pins(view, frame, cell, title.bounds(), placed);
        pins.forEach(pin -> drawn.addAll(pin(pin)));
        return new SceneView(view.view(), view.title(), cell, List.copyOf(drawn), pins);
    }

    /** Draws a zone's fill and outline; its textures come after the quiet detail that follows it in the drawing. */
    private Pending zone(ZoneId zone, Path2D px, SceneColors colors, List<Drawn> drawn) {
        outlines.computeIfAbsent(zone, id -> new ArrayList<>()).add(px);
        ZoneLook look = ink.looks().getOrDefault(zone, SceneColors.NO_LOOK);
        Color fill = colors.fill(look);
        drawn.add(Drawn.Filled.of(px, fill, zone));
        drawn.add(Drawn.Stroked.of(px, colors.lineOn(fill), 0.9));
        List<Drawn> textures = new ArrayList<>();
        if (look.hatch() > 0) {
            textures.add(Drawn.Stroked.texture(Texture.hatch(px, look.hatch()), colors.textureOn(fill), Texture.LINE));
        }
        if (look.stipple() > 0) {
            textures.add(new Drawn.Dots(Texture.stipple(px, look.stipple()), colors.textureOn(fill)));
        }
        return new Pending(textures, look.share().isPresent() ? Optional.of(fill) : Optional.empty());
    }

    private void detail(ShapeKind kind, Path2D px, Optional<Color> valued, List<Drawn> drawn) {
        if (kind == ShapeKind.GAP) {
            drawn.add(Drawn.Stroked.of(px, palette.gap(), 0.9));
        } else if (valued.isPresent()) {
            Color quiet = InkPalette.mix(Contrast.readable(valued.get(), palette.ink()), valued.get(), 0.45);
            drawn.add(Drawn.Stroked.of(px, quiet, 0.5));
        } else if (kind == ShapeKind.DETAIL) {
            drawn.add(Drawn.Stroked.of(px, palette.detail(), 0.5));
        } else {
            drawn.add(Drawn.Filled.of(
                    px,
                    switch (kind) {
                        case GLASS -> palette.glass();
                        case SHADE -> palette.shade();
                        default -> palette.wheel();
                    }));
        }
    }

    /** What of a zone is still to be drawn, and its fill if that tells a value, which quiet fills must not cover. */
    private record Pending(List<Drawn> textures, Optional<Color> fill) {
        static final Pending NONE = new Pending(List.of(), Optional.empty());
    }

    private void noteUnlabeled(ViewDrawing view, List<LabelPlacement.Placed> placed) {
        Set<ZoneId> wanted = new LinkedHashSet<>();
        view.zones().forEach(shape -> wanted.add(shape.zone().orElseThrow()));
        wanted.removeIf(zone -> ink.textOf(zone).isEmpty());
        placed.forEach(label -> wanted.remove(label.zone()));
        unlabeled.addAll(wanted);
    }

    private List<PinPlacement.Placed> pins(
            ViewDrawing view,
            Rectangle2D frame,
            Rectangle2D cell,
            Rectangle2D title,
            List<LabelPlacement.Placed> labels) {
        List<PinPlacement.Wish> wishes = ink.pins().stream()
                .filter(pin -> pin.point().view() == view.view())
                .map(pin -> new PinPlacement.Wish(
                        pin.number(),
                        new Point2D.Double(
                                frame.getX() + pin.point().x() * frame.getWidth(),
                                frame.getY() + pin.point().y() * frame.getHeight())))
                .toList();
        List<Rectangle2D> taken = new ArrayList<>(List.of(title));
        labels.forEach(label -> taken.add(label.box()));
        return PinPlacement.place(wishes, cell, taken);
    }

    private List<Drawn> pin(PinPlacement.Placed pin) {
        double r = PinPlacement.DISC / 2;
        Ellipse2D disc =
                new Ellipse2D.Double(pin.center().getX() - r, pin.center().getY() - r, 2 * r, 2 * r);
        String number = Integer.toString(pin.number());
        double size = number.length() > 2 ? 9 : 11;
        double width = measure.width(number, size, true);
        return List.of(
                Drawn.Stroked.of(new Line2D.Double(pin.tip(), pin.center()), palette.accent(), 1),
                Drawn.Filled.of(
                        new Ellipse2D.Double(pin.tip().getX() - 2, pin.tip().getY() - 2, 4, 4), palette.accent()),
                Drawn.Filled.of(disc, palette.accent()),
                Drawn.Stroked.of(disc, palette.ground(), 1),
                new Drawn.Words(
                        number,
                        pin.center().getX() - width / 2,
                        pin.center().getY() + 0.35 * size,
                        size,
                        true,
                        Contrast.readable(palette.accent(), palette.ground(), palette.ink()),
                        width));
    }

    /** The point of a view under a point of the sheet and the zone it means; empty outside all views. */
    public Optional<Hit> hit(double xPx, double yPx) {
        for (ViewDrawing view : diagram.views()) {
            Rectangle2D frame = layout.frames().get(view.view());
            if (frame != null && Drawn.grown(frame, HIT_PX).contains(xPx, yPx)) {
                double x = (xPx - frame.getX()) / frame.getWidth();
                double y = (yPx - frame.getY()) / frame.getHeight();
                ViewPoint point = new ViewPoint(view.view(), Math.min(1, Math.max(0, x)), Math.min(1, Math.max(0, y)));
                return Optional.of(new Hit(
                        point, ZoneHits.at(view, x * view.widthMm(), y * view.heightMm(), HIT_PX / layout.scale())));
            }
        }
        return Optional.empty();
    }

    /** The number of the pin whose disc lies under a point of the sheet. */
    public OptionalInt pinAt(double xPx, double yPx) {
        return views.stream()
                .flatMap(view -> view.pins().stream())
                .filter(pin -> pin.center().distance(xPx, yPx) <= PinPlacement.DISC / 2)
                .mapToInt(PinPlacement.Placed::number)
                .findFirst();
    }

    /** The center of a pin's disc on the sheet, px; empty if the pin is not drawn. */
    public Optional<Point2D> pinCenter(int number) {
        return views.stream()
                .flatMap(view -> view.pins().stream())
                .filter(pin -> pin.number() == number)
                .map(PinPlacement.Placed::center)
                .findFirst();
    }

    /** The view whose cell holds a point of the sheet. */
    public Optional<View> viewAt(double xPx, double yPx) {
        return views.stream()
                .filter(view -> view.cell().contains(xPx, yPx))
                .map(SceneView::view)
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
        return List.copyOf(outlines.getOrDefault(zone, List.of()));
    }

    /** Zones whose label found no place in some view; to be told in a table instead. */
    public Set<ZoneId> unlabeled() {
        return Set.copyOf(unlabeled);
    }

    /** Zones that bear a number in some view, by number. */
    List<ZoneId> numbered() {
        return diagram.zones().stream().filter(numbered::contains).toList();
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

    List<SceneView> views() {
        return views;
    }

    List<Drawn> key() {
        return key;
    }

    List<Drawn> legend() {
        return legend;
    }
}
