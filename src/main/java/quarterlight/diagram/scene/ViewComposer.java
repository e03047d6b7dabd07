package quarterlight.diagram.scene;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.diagram.DiagramShape;
import quarterlight.diagram.ShapeKind;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.ColorContrast;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.LetterMark;
import quarterlight.diagram.ink.PinMark;
import quarterlight.diagram.ink.SceneColors;
import quarterlight.diagram.ink.Surface;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.diagram.place.CarCover;
import quarterlight.diagram.place.LabelPlacement;
import quarterlight.diagram.place.PinPlacement;

/** Composes the views of a scene: the drawing, then values in their zones, then letters, then discs, each off what stands already. */
final class ViewComposer {
    private final ZonePlaces places;
    private final SheetLayout layout;
    private final DiagramInk ink;
    private final SceneColors colors;
    private final InkPalette palette;
    private final TextMeasure measure;
    private final NameKey nameKey;
    private final Map<View, List<LetterMark>> letters;

    ViewComposer(
            ZonePlaces places,
            SheetLayout layout,
            DiagramInk ink,
            SceneColors colors,
            TextMeasure measure,
            NameKey nameKey) {
        this.places = places;
        this.layout = layout;
        this.ink = ink;
        this.colors = colors;
        this.palette = colors.palette();
        this.measure = measure;
        this.nameKey = nameKey;
        this.letters = lettersByView();
    }

    ViewScene compose(ViewDrawing view) {
        Rectangle2D frame = layout.frames().get(view.view());
        Rectangle2D cell = layout.cells().get(view.view());
        AffineTransform toPx = AffineTransform.getTranslateInstance(frame.getX(), frame.getY());
        toPx.scale(layout.scale(), layout.scale());
        List<DrawnItem> drawn = new ArrayList<>();
        Map<ZoneId, List<Shape>> outlines = new HashMap<>();
        double titleWidth = measure.width(view.title(), SceneLabels.SIZE, false);
        DrawnItem.Words title = new DrawnItem.Words(
                view.title(),
                frame.getX(),
                Math.max(cell.getY() + 13, frame.getY() - 20),
                SceneLabels.SIZE,
                false,
                palette.secondInk(),
                titleWidth);
        drawn.add(title);
        List<DrawnItem> silhouettes = new ArrayList<>();
        Pending zone = Pending.NONE;
        for (DiagramShape shape : view.shapes()) {
            Path2D px = PathSimplifier.path(new Path2D.Double(shape.path(), toPx));
            if (shape.kind() == ShapeKind.SILHOUETTE) {
                silhouettes.add(DrawnItem.Stroked.of(px, palette.silhouette(), 1.6));
            } else if (shape.zone().isPresent()) {
                drawn.addAll(zone.textures());
                outlines.computeIfAbsent(shape.zone().get(), id -> new ArrayList<>())
                        .add(px);
                zone = zone(shape.zone().get(), px, drawn);
            } else {
                detail(shape.kind(), px, zone.fill(), drawn);
            }
        }
        drawn.addAll(zone.textures());
        drawn.addAll(silhouettes);
        SceneLabels labels = new SceneLabels(view, places, frame, layout.scale(), ink, colors, measure, nameKey);
        List<PinMark> here = marks(view.view());
        LabelPlacement.Room room = new LabelPlacement.Room(
                new Rectangle2D.Double(
                        cell.getX() + 4, cell.getY() + 2, cell.getWidth() - 8, Math.max(1, cell.getHeight() - 4)),
                title.bounds(),
                new CarCover(view, cell, toPx)::touches,
                here.stream().map(pin -> tip(pin, frame)).toList());
        List<LabelPlacement.Placed> placed = labels.place(room);
        drawn.addAll(labels.draw(placed));
        List<LetterMark> marks = letters.getOrDefault(view.view(), List.of());
        List<LabelPlacement.Placed> squares = labels.letters(marks, room, placed);
        drawn.addAll(LetterDrawing.draw(squares, marks, palette, measure));
        List<Rectangle2D> taken = taken(title.bounds(), placed, squares);
        List<PinPlacement.Placed> pins = pins(here, frame, cell, taken);
        pins.forEach(
                pin -> drawn.addAll(DiscDrawing.draw(here.get(pin.number()).number(), pin, taken, palette, measure)));
        return new ViewScene(
                view.view(),
                view.title(),
                cell,
                drawn,
                placed,
                squares,
                here,
                pins,
                taken,
                outlines,
                unlabeled(view, placed),
                placed.stream()
                        .filter(labels::isNumber)
                        .map(LabelPlacement.Placed::zone)
                        .collect(Collectors.toSet()));
    }

    private static List<Rectangle2D> taken(
            Rectangle2D title, List<LabelPlacement.Placed> labels, List<LabelPlacement.Placed> letters) {
        return Stream.concat(
                        Stream.of(title),
                        Stream.concat(labels.stream(), letters.stream()).map(label -> DrawnItem.grown(label.box(), 2)))
                .toList();
    }

    /** The letters by the view that shows their zone best. */
    private Map<View, List<LetterMark>> lettersByView() {
        Map<View, List<LetterMark>> found = new EnumMap<>(View.class);
        for (LetterMark mark : ink.letters()) {
            layout.frames().keySet().stream()
                    .filter(view -> places.place(view, mark.zone()).isPresent())
                    .max(Comparator.comparingDouble((View view) -> places.place(view, mark.zone())
                                    .orElseThrow()
                                    .radiusMm())
                            .thenComparing(Comparator.<View>naturalOrder().reversed()))
                    .ifPresent(view -> found.computeIfAbsent(view, key -> new ArrayList<>())
                            .add(mark));
        }
        return found;
    }

    /** Draws a zone's fill and outline; its textures come after the quiet detail that follows it in the drawing. */
    private Pending zone(ZoneId zone, Path2D px, List<DrawnItem> drawn) {
        ZoneLook look = ink.lookOf(zone);
        Color fill = colors.fill(look);
        drawn.add(DrawnItem.Filled.of(px, fill, zone));
        drawn.add(DrawnItem.Stroked.of(px, colors.lineOn(fill), 0.9));
        List<DrawnItem> textures = new ArrayList<>(surface(look, px));
        if (look.hatch() > 0) {
            textures.add(
                    DrawnItem.Stroked.texture(Texture.hatch(px, look.hatch()), colors.textureOn(fill), Texture.LINE));
        }
        if (look.stipple() > 0) {
            textures.add(new DrawnItem.Dots(Texture.stipple(px, look.stipple()), colors.textureOn(fill)));
        }
        boolean told = look.step().isPresent() || look.surface() != Surface.PLAIN;
        return new Pending(textures, told ? Optional.of(fill) : Optional.empty());
    }

    private List<DrawnItem> surface(ZoneLook look, Path2D px) {
        return switch (look.surface()) {
            case THROUGH ->
                List.of(
                        DrawnItem.Stroked.of(px, palette.grave(), 2.4),
                        DrawnItem.Filled.of(Texture.holes(px), palette.grave()));
            case PARTIAL ->
                List.of(
                        DrawnItem.Stroked.texture(Texture.bands(px), colors.missing(), Texture.BAND),
                        DrawnItem.Stroked.of(px, colors.missing(), 1.6));
            default -> List.of();
        };
    }

    private void detail(ShapeKind kind, Path2D px, Optional<Color> valued, List<DrawnItem> drawn) {
        if (kind == ShapeKind.GAP) {
            drawn.add(DrawnItem.Stroked.of(px, palette.gap(), 0.9));
        } else if (valued.isPresent()) {
            Color quiet = InkPalette.mix(ColorContrast.readable(valued.get(), palette.ink()), valued.get(), 0.45);
            drawn.add(DrawnItem.Stroked.of(px, quiet, 0.5));
        } else if (kind == ShapeKind.DETAIL) {
            drawn.add(DrawnItem.Stroked.of(px, palette.detail(), 0.5));
        } else {
            drawn.add(DrawnItem.Filled.of(
                    px,
                    switch (kind) {
                        case GLASS -> palette.glass();
                        case SHADE -> palette.shade();
                        default -> palette.wheel();
                    }));
        }
    }

    /** What of a zone is still to be drawn, and its fill if that tells a value, which quiet fills must not cover. */
    private record Pending(List<DrawnItem> textures, Optional<Color> fill) {
        static final Pending NONE = new Pending(List.of(), Optional.empty());
    }

    private Set<ZoneId> unlabeled(ViewDrawing view, List<LabelPlacement.Placed> placed) {
        Set<ZoneId> wanted = new LinkedHashSet<>();
        view.zones().forEach(shape -> wanted.add(shape.zone().orElseThrow()));
        wanted.removeIf(zone -> ink.textOf(zone).isEmpty());
        placed.forEach(label -> wanted.remove(label.zone()));
        return wanted;
    }

    private List<PinMark> marks(View view) {
        return ink.pins().stream().filter(pin -> pin.point().view() == view).toList();
    }

    private static Point2D tip(PinMark pin, Rectangle2D frame) {
        return new Point2D.Double(
                frame.getX() + pin.point().x() * frame.getWidth(),
                frame.getY() + pin.point().y() * frame.getHeight());
    }

    /** The discs, each by the place of its mark in the list. */
    private static List<PinPlacement.Placed> pins(
            List<PinMark> marks, Rectangle2D frame, Rectangle2D cell, List<Rectangle2D> taken) {
        List<PinPlacement.Wish> wishes = new ArrayList<>();
        marks.forEach(mark -> wishes.add(new PinPlacement.Wish(wishes.size(), tip(mark, frame))));
        return PinPlacement.place(wishes, cell, taken);
    }
}
