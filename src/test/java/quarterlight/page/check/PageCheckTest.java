package quarterlight.page.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageCheckTest {
    @TempDir
    private Path folder;

    private Path pdf(Object... words) throws Exception {
        Path file = folder.resolve("report.pdf");
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                for (int i = 0; i < words.length; i += 4) {
                    out.beginText();
                    out.setFont(
                            new PDType1Font(Standard14Fonts.FontName.HELVETICA), ((Number) words[i + 1]).floatValue());
                    out.newLineAtOffset(((Number) words[i + 2]).floatValue(), ((Number) words[i + 3]).floatValue());
                    out.showText((String) words[i]);
                    out.endText();
                }
            }
            document.save(file.toFile());
        }
        return file;
    }

    private PageCheck check(Path file, String... secrets) throws Exception {
        return PageCheck.of(List.of(file), Set.of(secrets));
    }

    @Test
    void aCleanPageHasNoFault() throws Exception {
        PageCheck found = check(pdf("Hood, sound", 9, 60, 700, "Roof", 6.5, 60, 680), "the seller is in a hurry");
        assertThat(found.sentence()).isEqualTo("1 page, nothing private found, no fault.");
    }

    @Test
    void aPrivateWordIsFoundHoweverItIsSetAndIsNotRepeated() throws Exception {
        PageCheck found = check(pdf("The SELLER is in  a hurry", 9, 60, 700), "the seller is in a hurry");
        assertThat(found.faults()).hasSize(1);
        assertThat(found.sentence())
                .contains("report.pdf, page 1: something private")
                .doesNotContain("hurry");
    }

    @Test
    void aPlaceIsFound() throws Exception {
        Path html = folder.resolve("report.html");
        Files.writeString(html, "<p>48.137154, 11.576124</p>");
        assertThat(check(html).faults()).extracting(PageFault::what).containsExactly("a place stands in it");
        for (String page : List.of(
                "M1.23456L7.8 48.13715, -11.57612",
                "-48.13715\n  ,\n  11.57612",
                "0.1234567 9.87654321 48.1371540000000000000001,11.5761240000000000000001",
                "<exif GPSLatitude",
                "GPSLongitude=x")) {
            Files.writeString(html, page);
            assertThat(check(html).faults()).as(page).hasSize(1);
        }
        for (String page : List.of(
                "<p>4.8, 5.1 mil; 12.34567</p>",
                "48.13715, 11.5761",
                "48.1371, 11.57612",
                "48.13715 11.57612",
                "1.23456.78901, x 7.65432")) {
            Files.writeString(html, page);
            assertThat(check(html).faults()).as(page).isEmpty();
        }
    }

    @Test
    void everyPairOfWordsThatCoverEachOtherIsFoundOnceInWhateverOrderTheyWereWritten() throws Exception {
        assertThat(check(pdf(
                                "low", 9, 60, 500, "high", 9, 60, 700, "far", 9, 60, 100, "lower", 9, 62, 499, "higher",
                                9, 62, 701))
                        .faults())
                .extracting(PageFault::what)
                .containsExactlyInAnyOrder(
                        "\"higher\" and \"high\" cover each other", "\"low\" and \"lower\" cover each other");
    }

    @Test
    void wordsBesidePicturesAreFoundAndPicturesAreNotReadAsWords() throws Exception {
        Path html = folder.resolve("report.html");
        String picture = "<img src=\"data:image/jpeg;base64,AAAAwordsofthesellerBBBB+/==\"/>";
        Files.writeString(html, picture + "<p>\u00b5m</p>" + picture);
        assertThat(check(html, "wordsoftheseller").faults()).isEmpty();
        for (String page : List.of(
                "wordsoftheseller" + picture, picture + "wordsoftheseller" + picture, picture + " wordsoftheseller")) {
            Files.writeString(html, page);
            assertThat(check(html, "wordsoftheseller").faults()).as(page).hasSize(1);
        }
    }

    @Test
    void wordsThatAreSmallOffThePageOrOnEachOtherAreFound() throws Exception {
        assertThat(check(pdf("tiny", 6.3, 60, 700)).faults())
                .extracting(PageFault::what)
                .containsExactly("\"tiny\" is too small to read");
        assertThat(check(pdf("beyond", 9, 575, 700)).faults())
                .extracting(PageFault::what)
                .containsExactly("\"beyond\" runs off the page");
        assertThat(check(pdf("under", 9, 60, 700, "over", 9, 70, 698)).faults())
                .extracting(PageFault::what)
                .containsExactly("\"under\" and \"over\" cover each other");
        assertThat(check(pdf("one", 9, 60, 700, "below", 9, 60, 690)).faults()).isEmpty();
    }
}
