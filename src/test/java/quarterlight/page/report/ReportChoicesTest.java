package quarterlight.page.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import quarterlight.car.ZoneId;
import quarterlight.page.PdfValidator;
import quarterlight.page.print.Paper;
import quarterlight.task.Progress;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;

class ReportChoicesTest {
    private static VisitRecord with(VisitRecord visit, VisitChoices choices) {
        return new VisitRecord(
                visit.facts().with(choices),
                visit.photos(),
                visit.pins(),
                visit.readings(),
                visit.gaugeChecks(),
                visit.signs(),
                visit.traces(),
                visit.marks(),
                visit.trials(),
                visit.statements(),
                visit.features(),
                visit.clocks(),
                visit.photoNotes(),
                visit.hidden(),
                visit.coverage(),
                visit.leftOut(),
                visit.claims(),
                visit.odometer(),
                visit.released(),
                visit.decisions(),
                visit.dropped());
    }

    private static String text(Path folder) throws IOException {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(folder.resolve("report.pdf")))) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void zonesAndPhotosLeftOutAreGoneAndItIsSaid(@TempDir Path folder) throws Exception {
        VisitRecord visit = TypedVisit.parts()
                .leftOut(VisitParts.rows(
                        List.of(ReportExclusion.of(new ZoneId("hood")), ReportExclusion.of(new PhotoId(1)))))
                .record();
        TypedVisit.pages(visit, TypedVisit.colors()).write(folder, Paper.LETTER, Progress.NONE);
        assertThat(text(folder))
                .doesNotContain(TypedVisit.LATIN, TypedVisit.CAPTION, "4.9\u2009mil")
                .contains(
                        TypedVisit.MARKUP,
                        "1 zone left out by the inspector: Hood.",
                        "1 photo left out by the inspector.");
        assertThat(PdfValidator.objections(Files.readAllBytes(folder.resolve("report.pdf")), PDFAFlavour.PDFUA_1))
                .isEmpty();
    }

    @Test
    void aShortReportSaysSoAndHasTermsAndLimitsAsTyped(@TempDir Path folder) throws Exception {
        VisitChoices choices = new VisitChoices(
                false,
                Optional.empty(),
                Optional.of("Terms <1> & more"),
                Optional.of("Not seen on a lift"),
                ReportLength.SHORT);
        VisitRecord visit = with(TypedVisit.parts().record(), choices);
        TypedVisit.pages(visit, TypedVisit.colors()).write(folder, Paper.LETTER, Progress.NONE);
        assertThat(text(folder))
                .doesNotContain("Spots: 4.9")
                .contains("Terms <1> & more", "Not seen on a lift", "A short report, as chosen by the inspector");
    }
}
