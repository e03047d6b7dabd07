package quarterlight.ui.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.page.print.PageLine;
import quarterlight.page.print.PagePreview;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.ui.kit.place.Subject;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;

/** A click on a made page finds the row, zone or photo that the words there tell of. */
class PageEvidenceTest {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId DOOR = new ZoneId("front-door-left");

    @TempDir
    Path folder;

    private static Statement statement() {
        return new Statement(
                HOOD,
                Facets.of(Condition.DAMAGED),
                "Dent beside the latch, paint cracked along its rim.",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private PageEvidence evidence(VisitRecord visit) {
        return new PageEvidence(
                visit,
                Map.of("hood", HOOD, "front door, left", DOOR),
                photo -> photo.equals(new PhotoId(7)) ? Set.of(DOOR) : Set.of());
    }

    private static PageLine line(String text, double y) {
        return new PageLine(text, 0.1, y, 0.5, 0.012);
    }

    @Test
    void theNearestWordsThatNameSomethingDecide() throws Exception {
        try (OpenedVisit opened = OpenedVisit.coupe(
                folder, store -> new RowEdits(store).add(RecordKind.STATEMENTS, List.of(statement())))) {
            VisitRecord visit = OpenedVisit.asked(() -> opened.visit().visit());
            List<PageLine> page = List.of(
                    line("Visit of Apr 18, 2026", 0.05),
                    line("Dent beside the latch, paint cracked along", 0.20),
                    line("its rim.", 0.215),
                    line("Front door, left", 0.40),
                    line("photo 7, page 3", 0.60),
                    line("photo 8", 0.90));
            PageEvidence evidence = evidence(visit);
            assertThat(evidence.at(page, 0.2, 0.22))
                    .as("the second line of a statement")
                    .contains(new Subject.OfRow(
                            RecordKind.STATEMENTS, visit.statements().get(0).id()));
            assertThat(evidence.at(page, 0.3, 0.41)).contains(new Subject.OfZone(DOOR));
            assertThat(evidence.at(page, 0.3, 0.44)).as("below its heading").contains(new Subject.OfZone(DOOR));
            assertThat(evidence.at(page, 0.2, 0.60)).as("of the photo's pin").contains(new Subject.OfZone(DOOR));
            assertThat(evidence.at(page, 0.2, 0.91)).as("a photo without a pin").isEmpty();
            assertThat(evidence.at(page, 0.2, 0.02)).as("nothing near").isEmpty();
        }
    }

    @Test
    void linesOfAPageStandWhereTheyArePrinted() throws Exception {
        Path pdf = folder.resolve("page.pdf");
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            try (PDPageContentStream words = new PDPageContentStream(document, page)) {
                words.beginText();
                words.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
                words.newLineAtOffset(100, 700);
                words.showText("Front door, left");
                words.endText();
            }
            document.save(pdf.toFile());
        }
        try (PagePreview preview = PagePreview.open(pdf)) {
            List<PageLine> lines = preview.lines(0);
            assertThat(lines).extracting(PageLine::text).containsExactly("Front door, left");
            PageLine line = lines.get(0);
            assertThat(line.x()).isBetween(0.165, 0.171);
            assertThat(line.y() + line.height()).isBetween(0.165, 0.172);
            assertThat(line.from(0.2, 0.165)).isZero();
            assertThat(line.from(0.2, 0.365)).isBetween(0.19, 0.21);
        }
    }
}
