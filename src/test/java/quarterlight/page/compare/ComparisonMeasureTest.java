package quarterlight.page.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.compare.TestCar;
import quarterlight.page.PageFill;
import quarterlight.page.check.PageCheck;
import quarterlight.page.print.Paper;
import quarterlight.units.ThicknessUnit;

/** Measures the pages of a comparison: nothing cut or covered, no page half empty but the last of a part, a foot of one line. */
class ComparisonMeasureTest {
    private static final double FOOT_PT = 13 * 72 / 25.4;
    private static final Pattern MIL = Pattern.compile("(?i)\\bmils?\\b");
    private static final Pattern UM = Pattern.compile("[\u00b5\u03bc]m\\b");

    /** Where it is set, the pages are kept there for whoever wants to look at them. */
    private static final String KEPT = System.getProperty("quarterlight.pages");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"2, LETTER, MIL", "6, A4, UM"})
    void pagesAreFullInOneUnitAndTheFootIsOneLine(int cars, Paper paper, ThicknessUnit unit) throws Exception {
        TestCar[] laid = cars == 2 ? ComparedCars.two() : ComparedCars.six();
        List<Path> made = ComparedCars.pages(folder, paper, unit, laid);
        keep(cars, paper, made);
        assertThat(PageCheck.of(made, Set.of()).faults()).isEmpty();
        speaksIn(
                unit,
                Files.readString(folder.resolve("compare.html"))
                        .replaceAll("(?s)<style>.*?</style>", "")
                        .replaceAll("<[^>]*>", " "));
        try (PDDocument document = Loader.loadPDF(folder.resolve("compare.pdf").toFile())) {
            speaksIn(unit, new PDFTextStripper().getText(document));
            double wide = document.getPage(0).getCropBox().getWidth() * 25.4 / 72;
            assertThat(Math.abs(wide - paper.heightMm())).as("landscape").isLessThan(0.5);
            List<Integer> empty = new ArrayList<>();
            for (int page : PageFill.halfEmpty(document)) {
                if (!startsPart(document, page + 1)) {
                    empty.add(page);
                }
            }
            assertThat(empty).as("pages less than half full").isEmpty();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                List<String> foot = foot(document.getPage(page - 1));
                assertThat(foot).as("foot of page %d", page).hasSize(1);
                assertThat(foot.get(0)).contains("A ", "B ", "Page " + page + " of " + document.getNumberOfPages());
            }
        }
    }

    /** The unit that was asked for, and not the other. */
    private static void speaksIn(ThicknessUnit unit, String said) {
        assertThat(MIL.matcher(said).find()).isEqualTo(unit == ThicknessUnit.MIL);
        assertThat(UM.matcher(said).find()).isEqualTo(unit == ThicknessUnit.UM);
    }

    private void keep(int cars, Paper paper, List<Path> made) throws IOException {
        if (KEPT != null) {
            Path to = Files.createDirectories(Path.of(KEPT, "compare-" + cars + "-" + paper));
            for (Path file : made) {
                Files.write(to.resolve(file.getFileName()), Files.readAllBytes(file));
            }
        }
    }

    private static boolean startsPart(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String first = stripper.getText(document).strip().lines().findFirst().orElse("");
        return List.of(
                        "Grave and major",
                        "One hour more",
                        "The same place",
                        "Paint",
                        "Minor",
                        "Claimed",
                        "Trials",
                        "Zone")
                .stream()
                .anyMatch(first::startsWith);
    }

    private static List<String> foot(PDPage page) throws IOException {
        PDFTextStripperByArea area = new PDFTextStripperByArea();
        area.setSortByPosition(true);
        double height = page.getCropBox().getHeight();
        area.addRegion(
                "foot",
                new Rectangle2D.Double(0, height - FOOT_PT, page.getCropBox().getWidth(), FOOT_PT));
        area.extractRegions(page);
        return area.getTextForRegion("foot").strip().lines().toList();
    }
}
