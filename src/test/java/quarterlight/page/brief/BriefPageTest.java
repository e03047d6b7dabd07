package quarterlight.page.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.findings.Findings;
import quarterlight.matters.Matters;
import quarterlight.page.Anchor;
import quarterlight.page.WholeSentences;
import quarterlight.page.print.PageWorkers;
import quarterlight.page.print.Paper;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.rust.TestVisits;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.task.Progress;
import quarterlight.visit.BriefWords;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/** The first page is measured as it comes out: its words and where they stand. */
class BriefPageTest {
    private static final String HASH = "0123456789abcdef".repeat(4);
    private static final double LEAST_PT = 6.5;
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final LocalDate ISSUED = LocalDate.of(2026, 5, 2);

    @TempDir
    Path folder;

    private record Word(String text, float x, float y, float right, float sizePt) {}

    private BriefPage made(VisitRecord visit, Paper paper) throws Exception {
        Findings car = Findings.of(visit, ZoneTable.load(), Map.of(), DatePatternTable.load());
        Matters matters = Matters.of(car, List.of(), TrialTable.load());
        BuyerPictures source = new BuyerPictures(visit, (photo, at, side) -> Optional.empty(), JpegWriter::jpeg);
        try (PageWorkers workers = new PageWorkers(Progress.NONE)) {
            BodyDiagram diagram = DiagramFile.shipped(visit.facts().car().body());
            BriefPictures pictures = BriefPictures.start(
                            car,
                            matters,
                            () -> MattersDrawing.of(diagram, ZonePlaces.of(diagram), matters),
                            source,
                            workers)
                    .finished();
            return BriefPage.of(
                    car,
                    matters,
                    pictures,
                    ISSUED,
                    new Anchor(
                            Optional.of("16 " + HASH),
                            Optional.of(HASH),
                            Optional.of("May 2, 2026, for the buyer, SHA-256 " + HASH)),
                    paper);
        }
    }

    private List<Word> words(BriefPage page) throws Exception {
        Path pdf = page.write(Files.createDirectories(folder.resolve("out")));
        List<Word> words = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    for (TextPosition one : positions) {
                        words.add(new Word(
                                one.getUnicode(),
                                one.getXDirAdj(),
                                one.getYDirAdj(),
                                one.getXDirAdj() + one.getWidthDirAdj(),
                                one.getFontSizeInPt()));
                    }
                }
            }.getText(document);
        }
        return words;
    }

    private static String text(List<Word> words) {
        StringBuilder text = new StringBuilder();
        words.forEach(word -> text.append(word.text()));
        return text.toString().replaceAll("\\s+", " ");
    }

    private void measured(BriefPage page, Paper paper) throws Exception {
        List<Word> words = words(page);
        double right = (paper.widthMm() - 12) * POINTS_PER_MM + 0.5;
        double bottom = (paper.heightMm() - 4) * POINTS_PER_MM;
        assertThat(words).allSatisfy(word -> {
            assertThat(word.x()).as(word.text()).isGreaterThanOrEqualTo((float) (12 * POINTS_PER_MM - 0.5));
            assertThat((double) word.right()).as(word.text()).isLessThanOrEqualTo(right);
            assertThat((double) word.y()).as(word.text()).isLessThanOrEqualTo(bottom);
            assertThat((double) word.sizePt()).as(word.text()).isGreaterThanOrEqualTo(LEAST_PT);
        });
    }

    private static VisitFacts facts(BriefWords words, String terms) {
        VisitFacts bare = TestVisits.facts(BodyStyle.COUPE);
        return bare.with(new VisitChoices(
                false, Optional.empty(), Optional.of(terms), Optional.empty(), ReportLength.FULL, words));
    }

    private static Statement said(String zone, String text, Severity severity) {
        return new Statement(
                new ZoneId(zone),
                Facets.of(Condition.WORN),
                text,
                Optional.of(severity),
                Optional.of(Basis.SEEN),
                Optional.empty(),
                Optional.empty());
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void anEmptyVisitSaysThatNothingCanBeSaid(Paper paper) throws Exception {
        BriefPage page = made(VisitRecord.empty(TestVisits.facts(BodyStyle.WAGON)), paper);
        measured(page, paper);
        assertThat(page.content().paragraph())
                .contains("Nothing can be said of the car yet.")
                .doesNotContain("grave");
        assertThat(page.content().safety()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void fortyGraveMattersFillOnePageAndTheRestIsCounted(Paper paper) throws Exception {
        List<Trial> trials = new ArrayList<>();
        for (int n = 0; n < 40; n++) {
            trials.add(new Trial(
                    "Brake number " + n,
                    TrialResult.DOES_NOT,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of("goes to the floor and does not come back, tried three times")));
        }
        BriefPage page = made(
                new VisitParts(TestVisits.facts(BodyStyle.SEDAN))
                        .trials(VisitParts.rows(trials))
                        .record(),
                paper);
        measured(page, paper);
        assertThat(page.letters()).containsExactly("A", "B", "C", "D", "E", "F", "G");
        assertThat(page.content().more()).contains("33 grave");
        assertThat(page.content().paragraph())
                .as("a function is named with its answer, or it would read as if it worked")
                .contains("40 findings are grave: brake number 0: fails;");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void ofVeryLongTextsNoSentenceIsCutAndTheyStayOnePage(Paper paper) throws Exception {
        String lengthy = "It goes on and on, with a word for every inch of it; ".repeat(60);
        String unbroken = "W".repeat(400);
        List<Statement> statements = new ArrayList<>();
        for (String zone : List.of("hood", "roof", "engine", "dash", "decklid", "cowl", "tunnel", "carpet")) {
            statements.add(said(zone, zone.equals("hood") ? unbroken : lengthy, Severity.MAJOR));
        }
        List<Claim> claims = new ArrayList<>();
        for (int n = 0; n < 9; n++) {
            claims.add(new Claim(
                    lengthy,
                    Claimant.SELLER,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    false));
        }
        VisitFacts facts =
                facts(new BriefWords(Optional.of(lengthy), Optional.of(unbroken), Optional.of(lengthy)), lengthy);
        BriefPage page = made(
                new VisitParts(facts)
                        .statements(VisitParts.rows(statements))
                        .claims(VisitParts.rows(claims))
                        .record(),
                paper);
        measured(page, paper);
        assertThat(page.content().paragraph()).startsWith("It goes on").endsWith(WholeSentences.more());
        assertThat(page.content().terms()).endsWith(WholeSentences.more());
        assertThat(page.content().matters())
                .hasSize(7)
                .extracting(BriefContent.MatterLine::sentence)
                .contains(WholeSentences.all())
                .allMatch(said ->
                        said.endsWith("inch of it. " + WholeSentences.more()) || said.equals(WholeSentences.all()));
        assertThat(page.content().claims())
                .extracting(BriefContent.ClaimLine::claim)
                .allMatch(said -> said.endsWith(WholeSentences.more()));
        assertThat(text(words(page))).doesNotContain("\u2026");
        assertThat(page.content().whole())
                .as("what stands here alone stands whole in the report")
                .extracting(BriefContent.Fact::label)
                .containsExactlyInAnyOrder("In short", "Credentials", "Contact");
        assertThat(page.content().whole()).extracting(BriefContent.Fact::text).contains(lengthy.strip(), unbroken);
        assertThat(page.content().moreClaims()).contains("more claims");
    }

    @Test
    void aParagraphOfTheInspectorStandsInPlaceOfTheComposedOneAndIsMarked() throws Exception {
        VisitFacts facts = facts(
                new BriefWords(
                        Optional.of("32 years"), Optional.of("+1 555 0100"), Optional.of("Buy it for the roof.")),
                "Payable at once.");
        String text = text(words(made(VisitRecord.empty(facts), Paper.A4)));
        assertThat(text)
                .contains(
                        "Buy it for the roof.",
                        "In the inspector's own words.",
                        "32 years",
                        "+1 555 0100",
                        "Payable at once.")
                .contains("issued May 2, 2026", "Signature and date")
                .doesNotContain("Nothing can be said");
    }

    @Test
    void lettersStandByFallingSeverity() throws Exception {
        List<Statement> statements = List.of(
                said("hood", "minor one", Severity.MINOR),
                said("roof", "grave one", Severity.GRAVE),
                said("dash", "major one", Severity.MAJOR));
        List<String> severities = made(
                        new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                                .statements(VisitParts.rows(statements))
                                .record(),
                        Paper.LETTER)
                .content()
                .matters()
                .stream()
                .map(BriefContent.MatterLine::severity)
                .toList();
        assertThat(severities).startsWith("grave", "major").endsWith("minor");
        assertThat(severities)
                .isSortedAccordingTo(java.util.Comparator.comparingInt(
                        word -> List.of("grave", "major", "minor").indexOf(word)));
    }

    /** Two of a fender, one of the other, one of the roof, and one more: a reader who adds up comes to five. */
    @Test
    void thePlacesNamedAddUpToTheNumberOfFindings() throws Exception {
        List<Statement> statements = List.of(
                said("fender-left", "one", Severity.MAJOR),
                said("roof", "two", Severity.MAJOR),
                new Statement(
                        new ZoneId("fender-left"),
                        Facets.of(Origin.DOES_NOT_BELONG),
                        "three",
                        Optional.of(Severity.MAJOR),
                        Optional.of(Basis.SEEN),
                        Optional.empty(),
                        Optional.empty()),
                said("dash", "four", Severity.MAJOR),
                said("fender-right", "five", Severity.MAJOR));
        String paragraph = made(
                        new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                                .statements(VisitParts.rows(statements))
                                .record(),
                        Paper.A4)
                .content()
                .paragraph();
        assertThat(paragraph)
                .contains("Five are major: roof; front fender, left (2); front fender, right; and 1 more.");
    }

    @Test
    void everyLetterWithAPlaceStandsOnceOnTheDrawingBesideIt() throws Exception {
        List<Statement> statements = List.of(
                said("hood", "one", Severity.GRAVE),
                said("door-front-left", "two", Severity.GRAVE),
                said("dash", "three", Severity.MAJOR));
        Trial ofTheWholeCar = new Trial(
                "Brake pedal of our own",
                TrialResult.DOES_NOT,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        BriefPage page = made(
                new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                        .statements(VisitParts.rows(statements))
                        .trials(VisitParts.rows(List.of(ofTheWholeCar)))
                        .record(),
                Paper.A4);
        measured(page, Paper.A4);
        String drawn = String.join("", page.content().drawing());
        int placed = 0;
        for (BriefContent.MatterLine matter : page.content().matters()) {
            int times = drawn.split(">" + matter.letter() + "</text>", -1).length - 1;
            boolean told = page.content().notDrawn().matches("Not drawn here: .*\\b" + matter.letter() + "\\b.*");
            assertThat(times).as(matter.sentence()).isEqualTo(told ? 0 : 1);
            if (matter.sentence().contains("pedal of our own")) {
                assertThat(told).isTrue();
            }
            if (List.of("Hood", "Front door, left", "Dash and gauges").contains(matter.place())) {
                placed++;
                assertThat(told).as(matter.place()).isFalse();
            }
        }
        assertThat(placed).isEqualTo(3);
        List<Statement> inTheCabin = List.of(
                said("pedals", "gravest, in a view of its own", Severity.GRAVE),
                said("door-front-left", "one", Severity.MAJOR),
                said("fender-left", "two", Severity.MAJOR),
                said("quarter-left", "three", Severity.MAJOR));
        BriefContent gravest = made(
                        new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                                .statements(VisitParts.rows(inTheCabin))
                                .record(),
                        Paper.A4)
                .content();
        assertThat(gravest.matters().get(0).place()).isEqualTo("Pedals");
        assertThat(gravest.drawing().get(0)).contains(">A</text>");
        assertThat(page.content().drawing()).hasSizeBetween(1, 3);
    }

    @Test
    void theStepsOfCuttingAreThoseOfTheDocs() throws Exception {
        String doc =
                Files.readString(Path.of(System.getProperty("quarterlight.basedir", "."), "docs/methods/brief.md"));
        for (int n = 0; n < BriefLimits.STEPS.size(); n++) {
            BriefLimits step = BriefLimits.STEPS.get(n);
            assertThat(doc)
                    .contains("| " + (n + 1) + " | " + step.matters() + " | " + step.sentence() + " | "
                            + (step.crops() ? "yes" : "no") + " | " + (step.drawing() ? "yes" : "no") + " | "
                            + step.claims() + " | " + step.looks() + " | "
                            + step.paragraph() + " | " + step.terms() + " | " + step.facts() + " |");
        }
    }
}
