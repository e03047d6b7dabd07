package quarterlight.page.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.geom.Rectangle2D;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.page.PageFill;
import quarterlight.page.PagesChoice;
import quarterlight.page.PictureSizes;
import quarterlight.page.check.PageCheck;
import quarterlight.page.print.Paper;

/** Measures every page of visits that press them: nothing cut or covered, no half-empty page, no number apart from its sign or unit. */
class EveryPageTest {
    private static final double SEEN_PT = 5;
    private static final double TOLERANCE_MM = 0.5;
    private static final int LETTERED = 7;
    private static final Pattern GOES_ON = Pattern.compile("(?m)^\\W*page\\b");
    /** The others take minutes: {@code -Dquarterlight.pages=FOLDER} tries all, and keeps them there for whoever wants to look at them. */
    private static final Set<OddVisits> ALWAYS = EnumSet.of(OddVisits.EMPTY, OddVisits.FORTY_GRAVE);

    private static final Pattern APART = Pattern.compile("(?m)[\u2212\u00b1(][ \u2009\u202f]*$"
            + "|\\d[\u2009\u202f ]?\\R(mil|\u00b5m|mm\u00b2?|cm\u00b2?|%|psi|rpm)(?![\\p{L}\\d])"
            + "|page[\u00a0 ]*\\R[\u00a0 ]*\\d");

    private static final String KEPT = System.getProperty("quarterlight.pages");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "EMPTY, A4",
        "ONE_PHOTO, A4",
        "PICKUP, LETTER",
        "WAGON, A3",
        "FOUR_HUNDRED_PINS, A4",
        "FORTY_GRAVE, LETTER",
        "LONG_TEXTS, A4",
        "LONG_TEXTS, LETTER",
        "SCRIPTS, A4"
    })
    void everyPageIsFullAndNothingOnItIsCut(OddVisits odd, Paper paper) throws Exception {
        assumeTrue(ALWAYS.contains(odd) || KEPT != null, "tried on demand: -Dquarterlight.pages=FOLDER");
        List<Path> made = MadePages.of(odd.visit(), folder, PagesChoice.on(paper));
        keep(odd, paper, made);
        assertThat(PageCheck.of(made, Set.of()).faults()).isEmpty();
        for (Path file : made) {
            if (file.toString().endsWith(".pdf")) {
                try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
                    String name = file.getFileName().toString();
                    assertThat(PageFill.halfEmpty(document))
                            .as("pages of %s less than half full", name)
                            .isEmpty();
                    Matcher apart = APART.matcher(new PDFTextStripper().getText(document));
                    assertThat(apart.results()
                                    .map(found -> around(found.start(), document))
                                    .toList())
                            .as("numbers of %s apart from sign or unit", name)
                            .isEmpty();
                    if (name.equals("report.pdf")) {
                        assertThat(photosWithoutPage(document)).isEmpty();
                        assertThat(text(document, 1))
                                .as("the brief is one page")
                                .doesNotContain("Body diagram");
                        assertThat(text(document, 2)).contains("Body diagram");
                        if (odd == OddVisits.FORTY_GRAVE) {
                            showsEachMatterHalfAPageWideAndCloser(document, paper);
                        }
                    }
                }
            }
        }
    }

    private static void showsEachMatterHalfAPageWideAndCloser(PDDocument document, Paper paper) throws Exception {
        double half = (paper.widthMm() - 28) / 2;
        List<PictureSizes.Size> sizes = PictureSizes.of(document);
        assertThat(sizes.stream().filter(size -> Math.abs(size.longer() - half) < TOLERANCE_MM))
                .as("photos half a page wide")
                .hasSize(LETTERED);
        assertThat(sizes.stream().filter(size -> Math.abs(size.width() - 0.62 * half) < TOLERANCE_MM))
                .as("what is noted on each, closer")
                .hasSize(LETTERED);
    }

    private static void keep(OddVisits odd, Paper paper, List<Path> made) throws Exception {
        if (KEPT != null) {
            Path to = Files.createDirectories(Path.of(KEPT, odd + "-" + paper));
            for (Path file : made) {
                Files.write(to.resolve(file.getFileName()), Files.readAllBytes(file));
            }
        }
    }

    private static String around(int at, PDDocument document) {
        try {
            String text = new PDFTextStripper().getText(document);
            return text.substring(Math.max(0, at - 40), Math.min(text.length(), at + 40));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String text(PDDocument document, int page) throws Exception {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    /** References to photos that do not tell the page, of those that are set to be read; one may go on in the next line, which begins with the page. */
    private static List<String> photosWithoutPage(PDDocument document) throws Exception {
        List<String> without = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            List<String> open = new ArrayList<>();
            Set<String> goesOn = new HashSet<>();
            List<PDAnnotationLink> links = new ArrayList<>();
            for (var annotation : page.getAnnotations(one -> one instanceof PDAnnotationLink)) {
                links.add((PDAnnotationLink) annotation);
            }
            List<String> texts = texts(page, links);
            for (int i = 0; i < links.size(); i++) {
                PDAnnotationLink link = links.get(i);
                String goes = String.valueOf(link.getContents());
                String said = texts.get(i);
                boolean read = link.getRectangle().getHeight() > SEEN_PT;
                if (GOES_ON.matcher(said).find()) {
                    goesOn.add(goes);
                } else if (read && goes.startsWith("go to photo") && said.contains("photo") && !said.contains("page")) {
                    open.add(goes);
                }
            }
            open.removeAll(goesOn);
            without.addAll(open);
        }
        return without;
    }

    /** What stands where each link of a page is; the page is read once for all of them. */
    private static List<String> texts(PDPage page, List<PDAnnotationLink> links) throws Exception {
        PDFTextStripperByArea area = new PDFTextStripperByArea();
        for (int i = 0; i < links.size(); i++) {
            PDRectangle where = links.get(i).getRectangle();
            double top = page.getCropBox().getHeight() - where.getUpperRightY();
            area.addRegion(
                    "link " + i,
                    new Rectangle2D.Double(
                            where.getLowerLeftX() - 1, top - 1, where.getWidth() + 2, where.getHeight() + 2));
        }
        area.extractRegions(page);
        return area.getRegions().stream().map(area::getTextForRegion).toList();
    }
}
