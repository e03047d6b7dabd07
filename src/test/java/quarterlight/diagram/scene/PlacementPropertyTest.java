package quarterlight.diagram.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.DiagramShape;
import quarterlight.diagram.ShapeKind;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.LetterMark;
import quarterlight.diagram.ink.PinMark;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.Surface;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.diagram.place.LabelPlacement;
import quarterlight.diagram.place.PinPlacement;
import quarterlight.table.ZoneTable;
import quarterlight.visit.pin.ViewPoint;

/** Random visits on every body: a value stands in its own zone or beside the car, and nothing ever covers it. */
class PlacementPropertyTest {
    private static final double[][] ROOMS = {{1300, 820}, {540, 700}};
    private static final int SEEDS = 3;

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void noValueIsCoveredOrOutsideItsZone(BodyStyle style) throws Exception {
        BodyDiagram diagram = DiagramFile.shipped(Body.usual(style));
        ZonePlaces places = ZonePlaces.of(diagram);
        int values = 0;
        int beside = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            DiagramInk ink = ink(diagram, new Random(seed), seed == SEEDS ? 400 : 25 * (int) seed);
            for (SheetLayout layout : layouts(diagram, seed == 1)) {
                DiagramScene scene = new DiagramScene(
                        diagram, places, layout, ink, InkPalette.LIGHT, Ramp.load(), TextMeasure.bundled());
                boolean wide = layout.width() > 800;
                String where = style.word() + ", seed " + seed + ", " + layout.width();
                Set<ZoneId> told = new HashSet<>();
                for (ViewScene view : scene.views()) {
                    assertApart(view, where + ", " + view.view());
                    for (LabelPlacement.Placed value : view.labels()) {
                        assertInPlace(scene, view, value, where);
                        told.add(value.zone());
                        values++;
                        beside += value.inside() ? 0 : 1;
                    }
                }
                if (wide) {
                    assertThat(told).as(where).containsAll(ink.looks().keySet());
                }
                if (seed < SEEDS && wide) {
                    assertThat(scene.undrawn()).as(where).isEmpty();
                }
            }
        }
        assertThat(values).isGreaterThan(150);
        assertThat(beside).isPositive();
    }

    /** All views in a wide room and in a narrow pane, and one view alone as the window shows it. */
    private static List<SheetLayout> layouts(BodyDiagram diagram, boolean alone) {
        List<SheetLayout> layouts = new ArrayList<>();
        for (double[] room : ROOMS) {
            layouts.add(SheetLayout.fit(diagram, room[0], room[1], 0));
        }
        for (View view : alone ? List.of(View.LEFT, View.TOP) : List.<View>of()) {
            ViewDrawing drawing = diagram.view(view).orElseThrow();
            double scale = 560 / drawing.widthMm();
            double high = scale * drawing.heightMm();
            layouts.add(new SheetLayout(
                    632,
                    high + 72,
                    scale,
                    Map.of(view, new Rectangle2D.Double(36, 40, 560, high)),
                    Map.of(view, new Rectangle2D.Double(0, 0, 632, high + 72)),
                    Optional.empty(),
                    Optional.empty()));
        }
        return layouts;
    }

    private static DiagramInk ink(BodyDiagram diagram, Random random, int pins) {
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        List<LetterMark> letters = new ArrayList<>();
        for (Zone zone : ZoneTable.load().zonesOf(diagram.body())) {
            if (zone.finish() && diagram.zones().contains(zone.id()) && random.nextInt(10) < 8) {
                int step = random.nextInt(7) - 2;
                String number = String.format("%.1f", 1 + 40 * random.nextDouble());
                looks.put(zone.id(), new ZoneLook(OptionalInt.of(step), number, random.nextInt(5), 0, Surface.PLAIN));
            }
            if (diagram.zones().contains(zone.id()) && letters.size() < 12 && random.nextInt(14) == 0) {
                letters.add(
                        new LetterMark(String.valueOf((char) ('A' + letters.size())), zone.id(), random.nextBoolean()));
            }
        }
        List<PinMark> marks = new ArrayList<>();
        for (int i = 1; i <= pins; i++) {
            View view = View.values()[random.nextInt(View.values().length)];
            marks.add(new PinMark(Integer.toString(i), new ViewPoint(view, random.nextDouble(), random.nextDouble())));
        }
        return new DiagramInk(looks, Map.of(), Map.of(), marks, letters, Optional.empty());
    }

    private static void assertApart(ViewScene view, String where) {
        List<Rectangle2D> still = new ArrayList<>();
        view.labels().forEach(value -> still.add(value.box()));
        view.letters().forEach(letter -> still.add(letter.box()));
        for (int i = 0; i < still.size(); i++) {
            for (int j = i + 1; j < still.size(); j++) {
                assertThat(still.get(i).intersects(still.get(j))).as(where).isFalse();
            }
        }
        for (PinPlacement.Placed pin : view.pins()) {
            Rectangle2D disc =
                    new Rectangle2D.Double(pin.center().getX() - 9, pin.center().getY() - 9, 18, 18);
            Optional<Point2D> tip = DiscDrawing.visibleTip(pin.tip(), pin.center(), view.taken());
            for (Rectangle2D box : still) {
                assertThat(disc.intersects(box)).as(where + ", disc on a value").isFalse();
                tip.ifPresent(end -> assertThat(new Line2D.Double(end, pin.center()).intersects(box))
                        .as(where + ", leader over a value")
                        .isFalse());
            }
            for (PinPlacement.Placed other : view.pins()) {
                if (!other.equals(pin)) {
                    assertThat(other.center().distance(pin.center()))
                            .as(where)
                            .isGreaterThanOrEqualTo(PinPlacement.DISC);
                }
            }
        }
    }

    private static void assertInPlace(DiagramScene scene, ViewScene view, LabelPlacement.Placed value, String where) {
        Rectangle2D frame = scene.layout().frames().get(view.view());
        ViewDrawing drawing = scene.diagram().view(view.view()).orElseThrow();
        for (int i = 0; i <= 8; i++) {
            for (int j = 0; j <= 4; j++) {
                double x = value.box().getMinX() + value.box().getWidth() * i / 8 - frame.getX();
                double y = value.box().getMinY() + value.box().getHeight() * j / 4 - frame.getY();
                Optional<DiagramShape> top = top(
                        drawing, x / scene.layout().scale(), y / scene.layout().scale());
                if (value.inside()) {
                    assertThat(top.flatMap(DiagramShape::zone))
                            .as(where + ", " + view.view() + ": " + value)
                            .contains(value.zone());
                } else {
                    assertThat(top)
                            .as(where + ", " + view.view() + ": " + value)
                            .isEmpty();
                }
            }
        }
    }

    /** What is drawn on top at a point in mm: a zone, or the car where no zone is. */
    private static Optional<DiagramShape> top(ViewDrawing drawing, double xMm, double yMm) {
        Optional<DiagramShape> top = Optional.empty();
        for (DiagramShape shape : drawing.shapes()) {
            boolean counts = shape.kind() == ShapeKind.ZONE || shape.kind() == ShapeKind.SILHOUETTE && top.isEmpty();
            if (counts && shape.outline().contains(xMm, yMm)) {
                top = Optional.of(shape);
            }
        }
        return top;
    }
}
