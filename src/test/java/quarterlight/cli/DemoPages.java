package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import quarterlight.page.HtmlValidator;
import quarterlight.visit.VisitRecord;

/** What is asked of the pages of a whole visit: every sentence is in them, the HTML is sound, and they are not bloated. */
public final class DemoPages {
    private static final long MAX_BYTES = 15_000_000;

    private DemoPages() {}

    public static void check(Path visit, VisitRecord record) throws Exception {
        Path pdf = visit.resolve("pages/report.pdf");
        Path html = visit.resolve("pages/report.html");
        assertThat(record.photos()).hasSizeGreaterThan(60);
        assertThat(Files.size(pdf)).isLessThan(MAX_BYTES);
        assertThat(Files.size(html)).isLessThan(MAX_BYTES);
        String inPdf;
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            inPdf = letters(new PDFTextStripper().getText(document));
        }
        String inHtml = letters(Files.readString(html)
                .replaceAll("(?s)<(style|svg)\\b.*?</\\1\\s*>", " ")
                .replaceAll("<[^>]*>", " ")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&"));
        assertThat(record.statements()).hasSizeGreaterThan(20);
        record.statements().forEach(row -> {
            assertThat(inPdf).as("report.pdf").contains(letters(row.value().text()));
            assertThat(inHtml).as("report.html").contains(letters(row.value().text()));
        });
        record.trials()
                .forEach(row -> assertThat(inPdf).contains(letters(row.value().item())));
        record.marks()
                .forEach(row -> assertThat(inPdf).contains(letters(row.value().text())));
        saysWhatFillerNoSpotStandsOn(Files.readString(html));
        assertThat(HtmlValidator.objections(Files.readAllBytes(html))).isEmpty();
    }

    /** Of panels whose size is known, and never as nothing: the chance of filler between the spots. */
    private static void saysWhatFillerNoSpotStandsOn(String html) {
        List<String> panels = Pattern.compile("(?s)class=\"expert\".*?</div>")
                .matcher(html)
                .results()
                .map(MatchResult::group)
                .filter(panel -> panel.contains("no spot stands on"))
                .toList();
        assertThat(panels).isNotEmpty().allSatisfy(panel -> assertThat(panel)
                .containsPattern(
                        "Chance of a 10.cm patch of filler that no spot stands on: (under 1|[1-9]\\d?) of 100"));
    }

    /** The text without blanks and without the breaks of lines. */
    private static String letters(String text) {
        return text.replaceAll("[\\s\u00a0]+", "");
    }
}
