package quarterlight.page.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.car.body.EnginePlace;
import quarterlight.coverage.Coverage;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.findings.Findings;
import quarterlight.language.Language;
import quarterlight.language.StrayWords;
import quarterlight.page.PdfValidator;
import quarterlight.page.print.Paper;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;

class TakeAlongSheetTest {
    private static final double PT_MM = 25.4 / 72;
    private static final double MIN_PT = 6.5;
    private static final ZoneCatalog CATALOG = ZoneTable.load();
    private static final Map<Body, BodyDiagram> DIAGRAMS = new HashMap<>();

    @TempDir
    private Path folder;

    /** Every style as usual on the narrower paper, and on the shorter one those that fill it most: the usual coupe, and the bodies with the most zones. */
    static Stream<Arguments> sheets() {
        List<Body> bodies = new ArrayList<>();
        for (BodyStyle style : BodyStyle.values()) {
            bodies.add(Body.usual(style));
        }
        bodies.add(new Body(BodyStyle.WAGON, Construction.BODY_ON_FRAME, EnginePlace.FRONT));
        bodies.add(new Body(BodyStyle.SEDAN, Construction.SUBFRAME, EnginePlace.REAR));
        Stream<Body> most = Stream.concat(
                Stream.of(Body.usual(BodyStyle.COUPE)),
                bodies.subList(BodyStyle.values().length, bodies.size()).stream());
        return Stream.concat(
                bodies.stream().map(body -> Arguments.of(body, Paper.A4)),
                most.map(body -> Arguments.of(body, Paper.LETTER)));
    }

    private static VisitRecord visit(Body body) {
        Car car = new Car(
                "Tamarisk 1971",
                body,
                DriveSide.LEFT,
                FinishProfile.LACQUER,
                OptionalInt.of(1971),
                Optional.empty(),
                Substrate.STEEL,
                Map.of(),
                Dimensions.NOT_GIVEN);
        return new VisitParts(VisitParts.facts(car, ZoneId.of("UTC"))).record();
    }

    private static BodyDiagram diagram(Body body) throws Exception {
        if (!DIAGRAMS.containsKey(body)) {
            DIAGRAMS.put(body, DiagramFile.shipped(body));
        }
        return DIAGRAMS.get(body);
    }

    private static TakeAlongSheet sheet(Body body, Path settings) throws Exception {
        VisitRecord visit = visit(body);
        Findings findings = Findings.of(visit, CATALOG, Map.of(), DatePatternTable.load(settings));
        return new TakeAlongSheet(
                visit,
                CATALOG,
                Coverage.zones(visit, CATALOG, findings.thickness(), findings.rust(), CoverageTable.load(settings)),
                TrialTable.load(settings),
                diagram(body));
    }

    /** Every piece of text with its page. */
    private static final class Pieces extends PDFTextStripper {
        private record Piece(int page, TextPosition at) {}

        private final List<Piece> pieces = new ArrayList<>();

        @Override
        protected void processTextPosition(TextPosition text) {
            if (!text.getUnicode().isBlank()) {
                pieces.add(new Piece(getCurrentPageNo(), text));
            }
            super.processTextPosition(text);
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void hasTwoPagesWithRoomForEveryReading(Body body, Paper paper) throws Exception {
        TakeAlongSheet sheet = sheet(body, folder);
        itsTextIsLargeEnoughAndWithinTheMargins(sheet.write(folder.resolve("sheet.pdf"), paper), paper);
        everyOuterPanelHasExactlyOnePlaceForItsReadings(sheet.readingPlaces(paper), body, paper);
    }

    private static void itsTextIsLargeEnoughAndWithinTheMargins(Path file, Paper paper) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            assertThat(pdf.getPage(0).getMediaBox().getWidth() * PT_MM).isCloseTo(paper.widthMm(), within(0.2));
            assertThat(pdf.getPage(0).getMediaBox().getHeight() * PT_MM).isCloseTo(paper.heightMm(), within(0.2));
            Pieces text = new Pieces();
            text.getText(pdf);
            assertThat(text.pieces).hasSizeGreaterThan(1000);
            for (int page = 1; page <= 2; page++) {
                int at = page;
                double lowest = text.pieces.stream()
                        .filter(piece -> piece.page() == at)
                        .mapToDouble(piece -> piece.at().getYDirAdj() * PT_MM)
                        .filter(y -> y < paper.heightMm() - SheetRoom.BOTTOM_MARGIN)
                        .max()
                        .orElse(0);
                assertThat(lowest).as("page %d is not half empty", page).isGreaterThan(0.82 * paper.heightMm());
            }
            for (Pieces.Piece piece : text.pieces) {
                TextPosition at = piece.at();
                assertThat(at.getYScale()).as(at.getUnicode()).isGreaterThanOrEqualTo((float) MIN_PT);
                assertThat(at.getXDirAdj() * PT_MM).isGreaterThanOrEqualTo(SheetRoom.SIDE_MARGIN - 0.1);
                assertThat((at.getXDirAdj() + at.getWidthDirAdj()) * PT_MM)
                        .as("right end of %s on page %d", at.getUnicode(), piece.page())
                        .isLessThanOrEqualTo(paper.widthMm() - SheetRoom.SIDE_MARGIN + 0.1);
            }
        }
        assertThat(SheetViews.WORDS_PT).isGreaterThanOrEqualTo(MIN_PT);
    }

    private static void everyOuterPanelHasExactlyOnePlaceForItsReadings(ReadingSlots places, Body body, Paper paper)
            throws Exception {
        List<Zone> held = new ArrayList<>();
        places.inside().forEach(panel -> held.add(panel.zone()));
        places.beside().forEach(mark -> held.add(mark.zone()));
        Set<Zone> panels = CATALOG.zonesOf(body).stream().filter(Zone::finish).collect(Collectors.toSet());
        assertThat(held).containsExactlyInAnyOrderElementsOf(panels);
        assertThat(places.beside().stream().map(ReadingSlots.Beside::number))
                .containsExactlyElementsOf(java.util.stream.IntStream.rangeClosed(
                                1, places.beside().size())
                        .boxed()
                        .toList());
        double scale = SheetRoom.of(paper, new SheetViews(diagram(body), ZonePlaces.of(diagram(body))), 0)
                .scale();
        for (ReadingSlots.Inside panel : places.inside()) {
            assertThat(panel.boxes()).hasSize(ReadingSlots.SPOTS);
            for (Rectangle2D box : panel.boxes()) {
                assertThat(box.getWidth() * scale).isGreaterThan(8.9);
                assertThat(box.getHeight() * scale).isGreaterThan(5.4);
                Rectangle2D inner = new Rectangle2D.Double(
                        box.getX() + 10, box.getY() + 10, box.getWidth() - 20, box.getHeight() - 20);
                boolean within = diagram(body)
                        .view(panel.view())
                        .orElseThrow()
                        .outlinesOf(panel.zone().id())
                        .stream()
                        .anyMatch(shape -> shape.path().contains(inner));
                assertThat(within).as("%s lies in its panel", panel.zone().id()).isTrue();
            }
        }
    }

    @Test
    void passesTheReferenceValidatorAsTheOtherPagesDo() throws Exception {
        Path file = sheet(Body.usual(BodyStyle.COUPE), folder).write(folder.resolve("sheet.pdf"), Paper.LETTER);
        byte[] pdf = Files.readAllBytes(file);
        assertThat(PdfValidator.objections(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
        assertThat(PdfValidator.objections(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    }

    /** What stands beside the names there: their number, three boxes, and the space between them, 40.5 mm; a letter of 7 pt is 1.2 mm wide or less. */
    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void germanNamesAreNotWrittenIntoTheBoxesBesideThem(BodyStyle style) throws Exception {
        Body body = Body.usual(style);
        Language.GERMAN.during(() -> {
            double room = SheetRoom.of(Paper.A4, new SheetViews(diagram(body), ZonePlaces.of(diagram(body))), 0)
                    .sideWide();
            double names = Paper.A4.widthMm() - 2 * SheetRoom.SIDE_MARGIN - room - 40.5;
            assertThat(sheet(body, folder).readingPlaces(Paper.A4).beside())
                    .isNotEmpty()
                    .allSatisfy(mark -> assertThat(
                                    mark.zone().label().replaceAll(",.*", "").split("[ -]"))
                            .allSatisfy(word -> assertThat(word.length() * 1.2).isLessThan(names)));
            return names;
        });
    }

    @Test
    void saysWhatBelongsToThisCar() throws Exception {
        String coupe = text(Body.usual(BodyStyle.COUPE));
        String convertible = text(Body.usual(BodyStyle.CONVERTIBLE));
        assertThat(convertible).contains("Soft top");
        assertThat(coupe).doesNotContain("Soft top").contains("Trunk floor", "12 on 4", "Overspray");
        assertThat(text(Body.usual(BodyStyle.PICKUP))).contains("Bed floor", "Body or cab mounts L");
        assertThat(coupe)
                .contains("Nobody goes under a car that only a jack holds up", "licensed person", "Local rules");
        assertThat(coupe).contains("Gauge check", "Shim 2", "Vehicle number", "Tires, last four digits");
    }

    private String text(Body body) throws Exception {
        Path file = sheet(body, folder).write(folder.resolve("text.pdf"), Paper.A4);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    @Test
    void everySentenceOfTheSheetComesFromABundle() throws Exception {
        Path made = Language.MARKED.during(
                () -> sheet(Body.usual(BodyStyle.COUPE), folder).write(folder.resolve("marked.pdf"), Paper.A4));
        assertThat(StrayWords.in(made, "Tamarisk 1971")).isEmpty();
    }
}
