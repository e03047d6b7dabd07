package quarterlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.compare.matter.CarEvidence;
import quarterlight.compare.matter.Care;
import quarterlight.compare.matter.FoundMatters;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.SheetMaking;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.NominalAreas;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.findings.Findings;
import quarterlight.matters.Matters;
import quarterlight.page.compare.CarPage;
import quarterlight.page.compare.ComparisonPages;
import quarterlight.page.print.Paper;
import quarterlight.table.CounterpartTable;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.task.Progress;
import quarterlight.units.ThicknessText;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Judgment;

class VisitPagesTest {
    private static final String NAME = "Tamarisk <b>coupe</b> & \u0001\"friends\"";

    private static VisitRecord visit() {
        Car car = new Car(
                NAME,
                Body.usual(BodyStyle.COUPE),
                DriveSide.LEFT,
                FinishProfile.LACQUER,
                OptionalInt.of(1971),
                Optional.empty(),
                Substrate.STEEL,
                Map.of(),
                Dimensions.NOT_GIVEN);
        Optional<String> none = Optional.empty();
        VisitFacts facts = VisitParts.facts(car, ZoneId.of("UTC"));
        List<Recorded<Reading>> readings = new ArrayList<>();
        for (String[] row : new String[][] {{"hood", "2.1"}, {"hood", "2.3"}, {"quarter-left", "31.7"}}) {
            readings.add(new Recorded<>(
                    new RecordId(readings.size() + 1L),
                    new Reading(
                            new quarterlight.car.ZoneId(row[0]),
                            new GaugeValue.Measured(new BigDecimal(row[1]), ThicknessUnit.MIL),
                            Optional.empty(),
                            none,
                            Optional.empty(),
                            Optional.empty(),
                            none,
                            none)));
        }
        return new VisitParts(facts).readings(readings).record();
    }

    private static List<Path> write(Path folder, Paper paper) throws Exception {
        VisitRecord visit = visit();
        BodyDiagram diagram = DiagramFile.shipped(visit.facts().car().body());
        Findings findings = Findings.of(
                visit,
                ZoneTable.load(),
                NominalAreas.sizes(diagram, visit.facts().car().dimensions()),
                DatePatternTable.load());
        return new VisitPages(findings, diagram, id -> Optional.empty()).write(folder, paper, Progress.NONE);
    }

    @Test
    void theDiagramPageIsAccessibleAndArchivableOnBothPapers(@TempDir Path folder) throws Exception {
        for (Paper paper : Paper.values()) {
            write(folder, paper);
            byte[] pdf = Files.readAllBytes(folder.resolve("diagram.pdf"));
            assertThat(PdfValidator.objections(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
            assertThat(PdfValidator.objections(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getPage(0).getMediaBox().getWidth() / 72 * 25.4f)
                        .isBetween((float) paper.heightMm() - 0.5f, (float) paper.heightMm() + 0.5f);
            }
        }
    }

    @Test
    void whatWasTypedIsShownAsTypedAndIsNeverMarkup(@TempDir Path folder) throws Exception {
        write(folder, Paper.A4);
        try (PDDocument document = Loader.loadPDF(folder.resolve("diagram.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Tamarisk <b>coupe</b> & ")
                    .contains("31.7");
        }
        byte[] svg = Files.readAllBytes(folder.resolve("diagram.svg"));
        var parsed = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg));
        assertThat(parsed.getElementsByTagName("b").getLength()).isZero();
        assertThat(parsed.getDocumentElement().getTextContent()).contains("<b>coupe</b>", "2.2", "31.7");
    }

    @Test
    void thePageOfTwoCarsIsAccessibleAndSpeaksOfBothWithoutAWinner(@TempDir Path folder) throws Exception {
        VisitRecord visit = visit();
        BodyDiagram diagram = DiagramFile.shipped(visit.facts().car().body());
        Findings car = Findings.of(
                visit,
                ZoneTable.load(),
                NominalAreas.sizes(diagram, visit.facts().car().dimensions()),
                DatePatternTable.load());
        beside(car, car, diagram).write(folder, Paper.LETTER);
        byte[] pdf = Files.readAllBytes(folder.resolve("compare.pdf"));
        assertThat(PdfValidator.objections(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
        assertThat(PdfValidator.objections(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
        String html = Files.readString(folder.resolve("compare.html"));
        assertThat(HtmlValidator.objections(Files.readAllBytes(folder.resolve("compare.html"))))
                .isEmpty();
        assertThat(html)
                .contains("Tamarisk &lt;b&gt;coupe&lt;/b&gt;")
                .doesNotContain("<b>coupe", "<script", "http://localhost");
        assertThat(html).contains("Claimed and found", "No claim is recorded.");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Two cars side by side", "31.7", "Probability that A has fewer");
        }
    }

    @Test
    void thePageOfTwoCarsLaysClaimsAgainstWhatWasFound(@TempDir Path folder) throws Exception {
        VisitRecord visit = visit();
        BodyDiagram diagram = DiagramFile.shipped(visit.facts().car().body());
        Claim claim = new Claim(
                "never <hit>",
                Claimant.SELLER,
                Optional.of(new quarterlight.car.ZoneId("hood")),
                Optional.of("lip"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Judgment.OPEN),
                false);
        Findings none = findings(visit, diagram);
        Findings claimed = findings(
                new VisitParts(visit.facts())
                        .claims(VisitParts.rows(List.of(claim)))
                        .record(),
                diagram);
        beside(none, claimed, diagram).write(folder, Paper.A4);
        assertThat(PdfValidator.objections(Files.readAllBytes(folder.resolve("compare.pdf")), PDFAFlavour.PDFUA_1))
                .isEmpty();
        assertThat(HtmlValidator.objections(Files.readAllBytes(folder.resolve("compare.html"))))
                .isEmpty();
        String html = Files.readString(folder.resolve("compare.html"));
        assertThat(html)
                .contains("<b>A</b> No claim is recorded.", "Hood, lip", "never &lt;hit&gt;", "seller", "open")
                .doesNotContain("<b>B</b> No claim", "(proposed, not decided)");
    }

    private static ComparisonPages beside(Findings a, Findings b, BodyDiagram diagram) {
        ComparisonSheet sheet = SheetMaking.of(
                List.of(evidence(a), evidence(b)),
                new SheetMaking.Asked(
                        Care.NONE,
                        new ThicknessText(ThicknessUnit.MIL),
                        0,
                        1,
                        CoverageTable.load(),
                        CounterpartTable.load()));
        return new ComparisonPages(sheet, List.of(page(a, diagram), page(b, diagram)), 0, 1);
    }

    private static CarEvidence evidence(Findings car) {
        return FoundMatters.of(car, Matters.of(car, List.of(), TrialTable.load()), "");
    }

    private static CarPage page(Findings car, BodyDiagram diagram) {
        return new CarPage(car, diagram, (photo, px) -> Optional.empty(), java.util.Map.of());
    }

    private static Findings findings(VisitRecord visit, BodyDiagram diagram) {
        return Findings.of(
                visit,
                ZoneTable.load(),
                NominalAreas.sizes(diagram, visit.facts().car().dimensions()),
                DatePatternTable.load());
    }

    @Test
    void nothingHalfMadeIsLeftBehind(@TempDir Path folder) throws Exception {
        write(folder, Paper.A4);
        try (var files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("diagram.svg", "diagram.pdf");
        }
    }
}
