package quarterlight.ui.diagram;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.Surface;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.diagram.scene.SheetLayout;
import quarterlight.page.PinKey;
import quarterlight.table.ZoneTable;
import quarterlight.visit.VisitParts;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.ViewPoint;

/** In the window, as on pages, no disc covers a value, a title, the legend or another disc: of all bodies, all views and one of them. */
class PinLayerTest {
    private static final int PINS = 60;
    private static final int LEGEND_PX = 60;
    private static final ZoneId PILED = new ZoneId("hood");

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void noDiscCoversAValue(BodyStyle style) throws Exception {
        BodyDiagram diagram = DiagramFile.shipped(Body.usual(style));
        Random random = new Random(style.ordinal() + 1L);
        DiagramInk ink = values(diagram, random);
        List<PinKey.Entry> pins = pins(random);
        List<SheetLayout> layouts = new ArrayList<>();
        layouts.add(SheetLayout.fit(diagram, 430, 700, LEGEND_PX));
        for (View view : List.of(View.LEFT, View.TOP)) {
            layouts.add(OneView.fit(diagram, view, 640, 420, LEGEND_PX).orElseThrow());
        }
        for (SheetLayout layout : layouts) {
            DiagramScene scene = new DiagramScene(
                    diagram, ZonePlaces.of(diagram), layout, ink, InkPalette.LIGHT, Ramp.load(), TextMeasure.bundled());
            List<Rectangle2D> values = new ArrayList<>(scene.taken());
            assertThat(values).hasSizeGreaterThan(5);
            values.add(layout.legend().orElseThrow());
            PinLayer layer = new PinLayer();
            layer.scene(scene);
            layer.pins(pins.subList(0, PINS / 2));
            List<Rectangle2D> before = layer.covered();
            layer.pins(pins);
            assertThat(layer.covered()).as("a later pin moves none").containsAll(before);
            assertApart(layer.covered(), values, style + ", closed");
            int closed = layer.covered().size();
            layer.openZone(Optional.of(PILED.value()));
            if (layout.frames().containsKey(View.TOP)) {
                assertThat(layer.covered()).as("the pile is open").hasSizeGreaterThan(closed + 3);
            }
            assertApart(layer.covered(), values, style + ", open");
        }
    }

    private static void assertApart(List<Rectangle2D> discs, List<Rectangle2D> values, String where) {
        for (int i = 0; i < discs.size(); i++) {
            Rectangle2D disc = discs.get(i);
            assertThat(values).as(where + ", disc on a value").noneMatch(disc::intersects);
            for (Rectangle2D other : discs.subList(0, i)) {
                double apart =
                        Math.hypot(disc.getCenterX() - other.getCenterX(), disc.getCenterY() - other.getCenterY());
                assertThat(apart).as(where + ", disc on a disc").isGreaterThanOrEqualTo(disc.getWidth());
            }
        }
    }

    private static DiagramInk values(BodyDiagram diagram, Random random) {
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        for (Zone zone : ZoneTable.load().zonesOf(diagram.body())) {
            if (zone.finish() && diagram.zones().contains(zone.id())) {
                String number = String.format("%.1f", 1 + 40 * random.nextDouble());
                looks.put(zone.id(), new ZoneLook(OptionalInt.of(0), number, 0, 0, Surface.PLAIN));
            }
        }
        return new DiagramInk(looks, Map.of(), Map.of(), List.of(), Optional.empty());
    }

    /** Some anywhere, and a pile of five from above. */
    private static List<PinKey.Entry> pins(Random random) {
        List<PinKey.Entry> pins = new ArrayList<>();
        for (int i = 1; i <= PINS; i++) {
            boolean piled = i % 12 == 0;
            View view = piled ? View.TOP : View.values()[random.nextInt(View.values().length)];
            ViewPoint point = new ViewPoint(view, piled ? 0.2 : random.nextDouble(), piled ? 0.5 : random.nextDouble());
            ZoneId zone = piled ? PILED : new ZoneId("roof");
            pins.add(new PinKey.Entry(
                    Integer.toString(i),
                    new RecordId(i),
                    new PhotoId(i),
                    Optional.of(point),
                    zone.value(),
                    "",
                    "",
                    "p" + i,
                    VisitParts.pin(new PhotoId(i), zone)));
        }
        return pins;
    }
}
