package quarterlight.diagram.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.PlainDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.Highlight;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.PinMark;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.Surface;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.visit.pin.ViewPoint;

class DiagramSceneTest {
    private final BodyDiagram diagram = PlainDiagram.of(Body.usual(BodyStyle.SEDAN));
    private final ZonePlaces places = ZonePlaces.of(diagram);
    private final TextMeasure measure = TextMeasure.bundled();

    private DiagramInk ink() {
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        Map<ZoneId, String> names = new HashMap<>();
        int i = 0;
        for (ZoneId zone : diagram.zones()) {
            looks.put(
                    zone,
                    new ZoneLook(OptionalInt.of(i % 7 - 2), Integer.toString(90 + i), i % 5, i % 6, Surface.PLAIN));
            names.put(zone, "Zone <" + zone + ">");
            i++;
        }
        Legend legend = new Legend(
                Optional.of(new Legend.Steps(
                        "Mean thickness",
                        "µm",
                        List.of("60", "80", "130", "166", "260", "520"),
                        List.of(
                                "under 60",
                                "60 to 80",
                                "80 to 130",
                                "130 to 166",
                                "166 to 260",
                                "260 to 520",
                                "over 520"))),
                List.of(
                        new Legend.Key(
                                "Refinish likelihood, %",
                                List.of(new Legend.Swatch(Legend.Sample.HATCH, 1, "20 to 39"))),
                        new Legend.Key("Rust", List.of(new Legend.Swatch(Legend.Sample.STIPPLE, 5, "Ri 5")))));
        List<PinMark> pins = List.of(
                new PinMark("1", new ViewPoint(View.LEFT, 0.5, 0.5)),
                new PinMark("2", new ViewPoint(View.LEFT, 0.5, 0.5)),
                new PinMark("3", new ViewPoint(View.TOP, 0.2, 0.4)));
        return new DiagramInk(looks, Map.of(), names, pins, Optional.of(legend));
    }

    private DiagramScene scene(SheetLayout layout, DiagramInk ink) {
        return new DiagramScene(diagram, places, layout, ink, InkPalette.LIGHT, Ramp.load(), measure);
    }

    private static BufferedImage paint(DiagramScene scene, Highlight highlight) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(scene.layout().width()),
                (int) Math.ceil(scene.layout().height()),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        new DiagramPainter(scene).paint(g, highlight);
        g.dispose();
        return image;
    }

    @Test
    void cellsOfASheetDoNotOverlapAndHoldTheirDrawingsAtOneScale() {
        for (double[] room : new double[][] {{1920, 1000}, {1100, 700}, {842, 595}, {595, 842}, {400, 900}}) {
            SheetLayout layout = SheetLayout.fit(diagram, room[0], room[1], 100);
            assertThat(layout.frames()).hasSize(8);
            assertThat(layout.height()).isLessThanOrEqualTo(room[1] + 1e-6);
            List<View> views = new ArrayList<>(layout.cells().keySet());
            for (View view : views) {
                Rectangle2D cell = layout.cells().get(view);
                assertThat(cell.contains(layout.frames().get(view))).isTrue();
                assertThat(layout.frames().get(view).getWidth())
                        .isEqualTo(layout.scale()
                                * diagram.view(view).orElseThrow().widthMm());
                for (View other : views) {
                    if (other != view) {
                        Rectangle2D both =
                                cell.createIntersection(layout.cells().get(other));
                        assertThat(both.getWidth() > 1e-6 && both.getHeight() > 1e-6)
                                .as("%s and %s", view, other)
                                .isFalse();
                    }
                }
            }
        }
    }

    @Test
    void labelsDoNotOverlapAtPageAndWindowSize() {
        Map<ZoneId, String> names = new HashMap<>();
        diagram.zones().forEach(zone -> names.put(zone, zone.value()));
        DiagramInk words = new DiagramInk(Map.of(), names, names, List.of(), Optional.empty());
        for (double width : new double[] {842, 1100, 1920}) {
            DiagramScene scene = scene(SheetLayout.ofWidth(diagram, width, 0), words);
            for (ViewScene view : scene.views()) {
                List<DrawnItem.Words> labels = view.drawn().stream()
                        .filter(DrawnItem.Words.class::isInstance)
                        .map(DrawnItem.Words.class::cast)
                        .toList();
                for (int i = 0; i < labels.size(); i++) {
                    for (int j = i + 1; j < labels.size(); j++) {
                        assertThat(box(labels.get(i)).intersects(box(labels.get(j))))
                                .as(
                                        "%s: %s and %s at %.0f",
                                        view.view(),
                                        labels.get(i).text(),
                                        labels.get(j).text(),
                                        width)
                                .isFalse();
                    }
                }
            }
        }
        assertThat(scene(SheetLayout.ofWidth(diagram, 1920, 0), ink()).unlabeled())
                .isEmpty();
    }

    private static Rectangle2D box(DrawnItem.Words words) {
        return new Rectangle2D.Double(
                words.left(), words.baseline() - 0.7 * words.size(), words.width(), 0.7 * words.size());
    }

    @Test
    void aHitNamesTheZoneUnderThePointer() {
        DiagramScene scene = scene(SheetLayout.ofWidth(diagram, 1200, 80), ink());
        for (View view : View.values()) {
            for (ZoneId zone : diagram.zones()) {
                Optional<ViewPoint> point = places.pointFor(diagram.view(view).orElseThrow(), zone);
                if (point.isPresent()) {
                    Point2D px = scene.px(point.get()).orElseThrow();
                    DiagramScene.Hit hit = scene.hit(px.getX(), px.getY()).orElseThrow();
                    assertThat(hit.zone()).contains(zone);
                    assertThat(hit.point().view()).isEqualTo(view);
                }
            }
        }
        assertThat(scene.hit(scene.layout().width() / 2, scene.layout().height() - 5))
                .isEmpty();
        assertThat(scene.spots())
                .filteredOn(spot -> spot.kind() == DiagramScene.Spot.Kind.PHOTO)
                .extracting(DiagramScene.Spot::text)
                .containsExactlyInAnyOrder("1", "2", "3");
    }

    @Test
    void paintingTheDirtyRegionsAloneGivesTheSamePictureAsPaintingAll() {
        DiagramScene scene = scene(SheetLayout.ofWidth(diagram, 1200, 80), ink());
        DiagramPainter painter = new DiagramPainter(scene);
        Highlight before = new Highlight(Set.of(new ZoneId("roof")), Optional.of(new ZoneId("hood")));
        Highlight after = new Highlight(Set.of(new ZoneId("door-front-left")), Optional.of(new ZoneId("engine")));
        BufferedImage image = paint(scene, before);
        List<Rectangle> dirty = painter.dirty(before, after);
        assertThat(dirty).isNotEmpty();
        for (Rectangle region : dirty) {
            Graphics2D g = image.createGraphics();
            g.clip(region);
            painter.paint(g, after);
            g.dispose();
        }
        BufferedImage whole = paint(scene, after);
        int different = 0;
        for (int y = 0; y < whole.getHeight(); y++) {
            for (int x = 0; x < whole.getWidth(); x++) {
                if (whole.getRGB(x, y) != image.getRGB(x, y)) {
                    different++;
                }
            }
        }
        assertThat(different).isZero();
        double area =
                dirty.stream().mapToDouble(r -> (double) r.width * r.height).sum();
        assertThat(area).isLessThan(0.1 * whole.getWidth() * whole.getHeight());
        assertThat(painter.dirty(after, after)).isEmpty();
    }

    @Test
    void aPictureDrawnInBandsIsTheSceneDrawnAtOnce() {
        DiagramScene scene = scene(SheetLayout.ofWidth(diagram, 1200, 80), ink());
        int width = 1500;
        int height = (int) Math.ceil(1.25 * scene.layout().height());
        BufferedImage whole = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = whole.createGraphics();
        g.scale(1.25, 1.25);
        new DiagramPainter(scene).drawScene(g, new Rectangle(0, 0, 1200, height));
        g.dispose();
        BufferedImage bands = new DiagramPainter(scene).picture(width, height, 1.25, 1.25);
        int[] expected = whole.getRGB(0, 0, width, height, null, 0, width);
        assertThat(Arrays.stream(expected).distinct().count()).isGreaterThan(100);
        assertThat(bands.getRGB(0, 0, width, height, null, 0, width)).isEqualTo(expected);
    }

    @Test
    void thePageSaysEveryNumberAndNeedsNothingFromOutside() throws Exception {
        DiagramScene scene = scene(SheetLayout.fit(diagram, 842, 560, 120), ink());
        String svg = DiagramSvg.document(scene, "Sedan & <more>");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        assertThat(document.getElementsByTagNameNS("*", "title").item(0).getTextContent())
                .isEqualTo("Sedan & <more>");
        assertThat(svg).doesNotContain("href", "url(", "<script", "<image", "<style", "NaN");
        assertThat(svg)
                .contains("data-zone=\"hood\"")
                .contains("<title>Zone &lt;hood&gt;: " + ink().textOf(new ZoneId("hood")) + " µm</title>");
        assertThat(svg).contains(">Mean thickness<").contains(">166 to 260<").contains(">Ri 5<");
        assertThat(DiagramSvg.view(scene, View.TOP, 10, 20, 0.5).orElseThrow())
                .startsWith("<g ")
                .endsWith("</g>\n");
    }

    /**
     * Another program's picture of the page (Batik) and the picture of the window differ only where lines are smoothed. Dots and
     * hatching, which the window puts on whole pixels, are left out.
     */
    @Test
    void thePageAndTheWindowShowTheSamePicture() throws Exception {
        DiagramInk bare = new DiagramInk(ink().looks(), Map.of(), Map.of(), List.of(), Optional.empty());
        Map<ZoneId, ZoneLook> silent = new HashMap<>();
        bare.looks().forEach((zone, look) -> silent.put(zone, new ZoneLook(look.step(), "", 0, 0, Surface.PLAIN)));
        DiagramScene scene = scene(
                SheetLayout.ofWidth(diagram, 900, 0),
                new DiagramInk(silent, Map.of(), Map.of(), List.of(), Optional.empty()));
        BufferedImage window = paint(scene, Highlight.NONE);
        BufferedImage[] page = new BufferedImage[1];
        ImageTranscoder transcoder = new ImageTranscoder() {
            @Override
            public BufferedImage createImage(int width, int height) {
                return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            }

            @Override
            public void writeImage(BufferedImage image, TranscoderOutput output) {
                page[0] = image;
            }
        };
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) window.getWidth());
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_HEIGHT, (float) window.getHeight());
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_ALLOW_EXTERNAL_RESOURCES, false);
        transcoder.transcode(
                new TranscoderInput(new StringReader(DiagramSvg.document(scene, "Sedan"))), new TranscoderOutput());
        double sum = 0;
        int far = 0;
        // the titles of the views are left out: the page names the typeface, the test machine may lack it
        int pixels = 0;
        for (Rectangle2D frame : scene.layout().frames().values()) {
            for (int y = (int) frame.getMinY() + 2; y < frame.getMaxY() - 2; y++) {
                for (int x = (int) frame.getMinX() + 2; x < frame.getMaxX() - 2; x++) {
                    int d = Math.abs((window.getRGB(x, y) >> 8 & 0xFF) - (page[0].getRGB(x, y) >> 8 & 0xFF));
                    sum += d;
                    far += d > 96 ? 1 : 0;
                    pixels++;
                }
            }
        }
        assertThat(pixels).isGreaterThan(100_000);
        assertThat(sum / pixels).isLessThan(4);
        assertThat((double) far / pixels).isLessThan(0.01);
    }
}
