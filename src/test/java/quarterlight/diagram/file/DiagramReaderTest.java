package quarterlight.diagram.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.EnginePlace;
import quarterlight.diagram.PlainDiagram;
import quarterlight.diagram.ShapeOutline;
import quarterlight.diagram.ViewDrawing;
import quarterlight.table.ZoneTable;

class DiagramReaderTest {
    private static final String HEAD =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" data-style=\"coupe\" data-wheelbase-mm=\"2740\""
                    + " data-length-mm=\"4690\" data-width-mm=\"1810\" data-height-mm=\"1330\">";
    private static final String LEFT =
            "<g data-view=\"left\" data-width-mm=\"5000\" data-height-mm=\"1500\" transform=\"translate(70 90)\">";

    private static DiagramFile read(String svg) throws Exception {
        return DiagramFile.read("own.svg", new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static String around(String inView) {
        return HEAD + "\n" + LEFT + inView + "</g></svg>";
    }

    @Test
    void coordinatesAreMillimetersOfTheViewWhereverTheViewStandsInTheFile() throws Exception {
        DiagramFile file = read(around("<title>Left side</title><g transform=\"translate(10,20) scale(2)\">"
                + "<path id=\"left-hood\" class=\"zone\" data-zone=\"hood\" d=\"m0 0h100v50H0z\"/></g>"));
        ViewDrawing left = file.views().get(0);
        assertThat(left.view()).isEqualTo(View.LEFT);
        assertThat(left.title()).isEqualTo("Left side");
        assertThat(left.widthMm()).isEqualTo(5000);
        ShapeOutline hood = left.zones().get(0).outline();
        assertThat(hood.bounds().getMinX()).isEqualTo(10);
        assertThat(hood.bounds().getMaxY()).isEqualTo(120);
        assertThat(hood.area()).isCloseTo(200 * 100, within(1e-6));
        assertThat(hood.closed()).isTrue();
    }

    @Test
    void aCurveIsFlattenedWithinHalfAMillimeter() throws Exception {
        // circle of radius 325 mm by four cubic arcs, constant 0.5522847 (the usual approximation, error 0.03 %)
        double k = 325 * 0.5522847498;
        String d = "M325 0C325 " + k + " " + k + " 325 0 325C" + -k + " 325 -325 " + k + " -325 0C-325 " + -k + " " + -k
                + " -325 0 -325C" + k + " -325 325 " + -k + " 325 0Z";
        DiagramFile file = read(around(
                "<path id=\"left-wheel-front-left\" class=\"zone\" data-zone=\"wheel-front-left\" d=\"" + d + "\"/>"));
        double area = file.views().get(0).zones().get(0).outline().area();
        assertThat(area).isCloseTo(Math.PI * 325 * 325, within(0.002 * Math.PI * 325 * 325));
    }

    @Test
    void aShapeBelongsOnlyToTheBodiesItNames() throws Exception {
        String path = "d=\"M0 0L10 0L10 10Z\"/>";
        DiagramFile file = read(around(
                "<g data-engine=\"front\"><path id=\"left-hood\" class=\"zone\" data-zone=\"hood\" " + path + "</g>"
                        + "<path id=\"left-front-lid\" class=\"zone\" data-zone=\"front-lid\" data-engine=\"rear\" "
                        + path
                        + "<path class=\"detail\" data-construction=\"unibody subframe\" " + path));
        Body front = Body.usual(BodyStyle.COUPE);
        Body rear = new Body(BodyStyle.COUPE, Construction.BODY_ON_FRAME, EnginePlace.REAR);
        assertThat(file.of(front).zones()).containsExactly(new ZoneId("hood"));
        assertThat(file.of(rear).zones()).containsExactly(new ZoneId("front-lid"));
        assertThat(file.of(front).views().get(0).shapes()).hasSize(2);
        assertThat(file.of(rear).views().get(0).shapes()).hasSize(1);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "<script>alert(1)</script>|<script>",
                "<foreignObject/>|<foreignObject>",
                "<image href=\"#a\"/>|<image>",
                "<use href=\"#a\"/>|<use>",
                "<g onclick=\"x()\"/>|onclick",
                "<path class=\"detail\" d=\"M0 0L1 1\" style=\"fill:url(http://example.org/a)\"/>|outside the file",
                "<path class=\"detail\" d=\"M0 0L1 1\" fill=\"url( 'file:///etc/passwd')\"/>|outside the file",
                "<style>@import 'a.css';</style>|loads or runs",
                "<style>.a{background:url(/**/a.png)}</style>|outside the file",
                "<linearGradient xmlns:xlink=\"http://www.w3.org/1999/xlink\" xlink:href=\"other.svg#g\"/>|outside the file",
                "<path class=\"zone\" d=\"M0 0L1 1Z\"/>|neither a zone",
                "<path class=\"detail\" data-zone=\"hood\" d=\"M0 0L1 1Z\"/>|neither a zone",
                "<rect class=\"zone\" data-zone=\"hood\"/>|drawn as <rect>",
                "<path class=\"zone\" data-zone=\"Hood\" d=\"M0 0L1 1Z\"/>|named \"Hood\"",
                "<path class=\"detail\" d=\"M0 0 L oops\"/>|path data",
                "<path class=\"detail\" d=\"M0 0 L1e30 5\"/>|path data",
                "<g data-view=\"left\" data-width-mm=\"5\" data-height-mm=\"5\"/>|inside another",
                "<path class=\"detail\" data-engine=\"middle\" d=\"M0 0L1 1\"/>|data-engine is \"middle\"",
                "<g transform=\"spin(4)\"/>|transform",
            })
    void whatCouldRunLoadOrConfuseIsRefusedWithItsPlace(String inView, String found) {
        assertThatThrownBy(() -> read(around(inView))).isInstanceOfSatisfying(DiagramRefused.class, e -> {
            assertThat(e.found()).contains(found);
            assertThat(e.file()).isEqualTo("own.svg");
            assertThat(e.line()).hasValue(2);
            assertThat(e.getMessage())
                    .startsWith("own.svg, line 2: ")
                    .endsWith(".")
                    .doesNotContain("Exception");
        });
    }

    @Test
    void aDocumentTypeIsRefusedBeforeAnyEntityIsRead() {
        String bomb =
                "<!DOCTYPE svg [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\"><!ENTITY x SYSTEM \"file:///etc/passwd\">]>"
                        + HEAD + "<title>&b;&x;</title></svg>";
        assertThatThrownBy(() -> read(bomb)).isInstanceOf(DiagramRefused.class).hasMessageContaining("document type");
        assertThatThrownBy(() -> read("<?xml-stylesheet href=\"http://example.org/a.css\"?>" + HEAD + "</svg>"))
                .isInstanceOf(DiagramRefused.class)
                .hasMessageContaining("style sheet");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "data-style=\"coupe\"|data-style=\"hovercraft\"|use one of coupe, sedan",
                "data-style=\"coupe\"|x=\"1\"|lacks data-style",
                "data-length-mm=\"4690\"|data-length-mm=\"-3\"|data-length-mm",
                "data-length-mm=\"4690\"|data-length-mm=\"1e9\"|data-length-mm",
                "http://www.w3.org/2000/svg|http://example.org/other|not an SVG drawing",
            })
    void theHeadOfTheFileIsChecked(String good, String bad, String message) {
        assertThatThrownBy(() -> read(HEAD.replace(good, bad) + "</svg>"))
                .isInstanceOf(DiagramRefused.class)
                .hasMessageContaining(message);
    }

    @Test
    void aHugeOrEmptyOrCutFileIsRefusedWithASentence(@TempDir Path folder) throws Exception {
        Path huge = folder.resolve("huge.svg");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(50L * 1024 * 1024);
        }
        assertThatThrownBy(() -> DiagramFile.read(huge))
                .isInstanceOf(DiagramRefused.class)
                .hasMessageContaining("larger than 8 MB");
        assertThatThrownBy(() -> read("")).isInstanceOf(DiagramRefused.class).hasMessageContaining("not well-formed");
        assertThatThrownBy(() -> DiagramFile.read(folder.resolve("none.svg")))
                .isInstanceOf(DiagramRefused.class)
                .hasMessageContaining("none.svg");
        assertThatThrownBy(() -> read(HEAD + "<g>".repeat(60) + "</g>".repeat(60) + "</svg>"))
                .isInstanceOf(DiagramRefused.class)
                .hasMessageContaining("too many elements");
    }

    @Test
    void aDamagedFileIsReadOrRefusedAndNothingElse() {
        byte[] good = PlainDiagram.svg(BodyStyle.PICKUP).getBytes(StandardCharsets.UTF_8);
        long seed = 20260721;
        Random random = new Random(seed);
        int refused = 0;
        for (int i = 0; i < 300; i++) {
            byte[] bad = good.clone();
            for (int flips = 0; flips < 3; flips++) {
                bad[random.nextInt(bad.length)] = (byte) (i % 10 == 0 ? random.nextInt(256) : 32 + random.nextInt(95));
            }
            int length = i % 3 == 0 ? random.nextInt(bad.length) : bad.length;
            try {
                DiagramFile.read("bad.svg", new ByteArrayInputStream(bad, 0, length));
            } catch (DiagramRefused e) {
                refused++;
            } catch (Exception e) {
                throw new AssertionError("seed " + seed + ", file " + i, e);
            }
        }
        assertThat(refused).isBetween(100, 299);
    }

    @Test
    void anOwnDiagramMustBeOfTheStyleAndComplete(@TempDir Path folder) throws Exception {
        Path own = folder.resolve("mine.svg");
        Files.writeString(own, PlainDiagram.svg(BodyStyle.SEDAN));
        Body sedan = Body.usual(BodyStyle.SEDAN);
        assertThat(DiagramFile.own(own, sedan, ZoneTable.load()).zones()).contains(new ZoneId("hood"));
        assertThatThrownBy(() -> DiagramFile.own(own, Body.usual(BodyStyle.COUPE), ZoneTable.load()))
                .isInstanceOf(DiagramRefused.class)
                .hasMessageContaining("diagram of a sedan and the car is a coupe");
        Files.writeString(own, PlainDiagram.svg(BodyStyle.SEDAN).replaceAll("<path id=\"top-roof\"[^>]*>", ""));
        assertThatThrownBy(() -> DiagramFile.own(own, sedan, ZoneTable.load()))
                .isInstanceOf(DiagramRefused.class)
                .hasMessageContaining("zone roof is drawn in no view");
    }
}
