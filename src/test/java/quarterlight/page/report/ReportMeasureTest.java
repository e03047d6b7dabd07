package quarterlight.page.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.page.check.PageCheck;
import quarterlight.page.print.Paper;
import quarterlight.task.Progress;

/** Measures the report on every paper: words within the page, none too small, none on another, and every reference with its page. */
class ReportMeasureTest {
    private static final Pattern PAGE = Pattern.compile("page\\s(\\d+)");

    @ParameterizedTest
    @EnumSource(Paper.class)
    void wordsKeepTheirPlaceAndReferencesTellTheTruth(Paper paper, @TempDir Path folder) throws Exception {
        List<Path> made = TypedVisit.pages(TypedVisit.parts().record(), TypedVisit.colors())
                .write(folder, paper, Progress.NONE);
        PageCheck found = PageCheck.of(made, Set.of("a word that stands nowhere"));
        assertThat(found.faults()).isEmpty();
        assertThat(found.pages()).isPositive();
        int references = 0;
        int discs = 0;
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(folder.resolve("report.pdf")))) {
            for (PDPage page : document.getPages()) {
                for (PDAnnotation annotation : page.getAnnotations()) {
                    PDAnnotationLink link = (PDAnnotationLink) annotation;
                    PDPageDestination target = (PDPageDestination)
                            (link.getDestination() != null
                                    ? link.getDestination()
                                    : ((PDActionGoTo) link.getAction()).getDestination());
                    int number = document.getPages().indexOf(target.getPage()) + 1;
                    assertThat(number).isPositive();
                    Matcher said = PAGE.matcher(text(page, link.getRectangle()));
                    if (said.find()) {
                        assertThat(Integer.parseInt(said.group(1))).isEqualTo(number);
                        references++;
                    }
                    discs += link.getContents() != null && link.getContents().startsWith("go to photo") ? 1 : 0;
                }
            }
        }
        assertThat(references).isPositive();
        assertThat(discs).isPositive();
    }

    private static String text(PDPage page, PDRectangle where) throws Exception {
        PDFTextStripperByArea area = new PDFTextStripperByArea();
        double top = page.getCropBox().getHeight() - where.getUpperRightY();
        area.addRegion(
                "link",
                new Rectangle2D.Double(
                        where.getLowerLeftX() - 1, top - 1, where.getWidth() + 2, where.getHeight() + 2));
        area.extractRegions(page);
        return area.getTextForRegion("link");
    }
}
