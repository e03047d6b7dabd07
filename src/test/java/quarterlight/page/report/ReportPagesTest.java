package quarterlight.page.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import quarterlight.page.HtmlValidator;
import quarterlight.page.PdfValidator;
import quarterlight.page.print.Paper;
import quarterlight.task.Progress;

class ReportPagesTest {
    private static final Set<String> PLAIN_DIRECTORIES = Set.of("JPEG", "JFIF", "Huffman", "File Type");

    @TempDir
    private static Path folder;

    @BeforeAll
    static void make() throws IOException {
        TypedVisit.pages(TypedVisit.parts().record(), TypedVisit.colors()).write(folder, Paper.A4, Progress.NONE);
    }

    private static byte[] pdf() throws IOException {
        return Files.readAllBytes(folder.resolve("report.pdf"));
    }

    private static String html() throws IOException {
        return Files.readString(folder.resolve("report.html"));
    }

    private static Document parsed() throws Exception {
        String page = html();
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(
                        page.substring(page.indexOf("<html")).getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    }

    private static List<Element> elements(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            all.add((Element) nodes.item(i));
        }
        return all;
    }

    private static String words(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static String pdfText() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf())) {
            return words(new PDFTextStripper().getText(document));
        }
    }

    @Test
    void thePdfPassesTheReferenceValidators() throws Exception {
        assertThat(PdfValidator.objections(pdf(), PDFAFlavour.PDFA_2_A)).isEmpty();
        assertThat(PdfValidator.objections(pdf(), PDFAFlavour.PDFUA_1)).isEmpty();
    }

    @Test
    void theHtmlPassesTheValidatorWhichWouldFindAFault() throws Exception {
        assertThat(HtmlValidator.objections(html().getBytes(UTF_8))).isEmpty();
        String broken = html().replaceFirst("<h3>", "<h3 id=\"top\" alt=\"\">");
        assertThat(HtmlValidator.objections(broken.getBytes(UTF_8)))
                .anyMatch(said -> said.contains("Duplicate ID"))
                .anyMatch(said -> said.contains("not allowed"));
    }

    @Test
    void everythingTypedIsFoundInThePdfAsTyped() throws Exception {
        assertThat(pdfText())
                .contains(
                        TypedVisit.MARKUP,
                        TypedVisit.LATIN,
                        TypedVisit.CAPTION,
                        TypedVisit.MARK,
                        TypedVisit.TRIAL,
                        TypedVisit.NOTE)
                .as("other scripts are set, and only what no typeface has stands there as its code")
                .contains("\u5DE6 fender", "\uD83D\uDE97 end", "before[U+0001][U+202E]after")
                .doesNotContain("[U+5DE6]", "[U+05D0]");
    }

    @Test
    void everythingTypedIsFoundInTheHtmlAsTyped() throws Exception {
        assertThat(words(parsed().getDocumentElement().getTextContent()))
                .contains(
                        TypedVisit.MARKUP,
                        TypedVisit.LATIN,
                        TypedVisit.FOREIGN,
                        TypedVisit.CAPTION,
                        TypedVisit.MARK,
                        TypedVisit.TRIAL,
                        TypedVisit.NOTE,
                        "before[U+0001]\u202eafter");
    }

    @Test
    void theHtmlStandsAlone() throws Exception {
        Document document = parsed();
        Set<String> ids = new HashSet<>();
        for (Element element : elements(document, "*")) {
            String id = element.getAttribute("id");
            assertThat(id.isEmpty() || ids.add(id)).as("id %s stands twice", id).isTrue();
            assertThat(element.getTagName()).isNotIn("script", "iframe", "object", "embed", "link", "base", "form");
            for (String address : List.of("src", "href", "xlink:href", "style")) {
                assertThat(element.getAttribute(address)).doesNotContain("//", "url(");
            }
            assertThat(Stream.of("onload", "onerror", "onclick").filter(element::hasAttribute))
                    .isEmpty();
        }
        List<Element> links = elements(document, "a");
        assertThat(links).hasSizeGreaterThan(15);
        for (Element link : links) {
            assertThat(link.getAttribute("href")).startsWith("#");
            assertThat(ids).contains(link.getAttribute("href").substring(1));
        }
        for (Element picture : elements(document, "img")) {
            assertThat(picture.getAttribute("alt")).isNotBlank();
            assertThat(picture.getAttribute("src")).startsWith("data:image/jpeg;base64,");
        }
        for (Element drawing : elements(document, "svg")) {
            assertThat(drawing.getAttribute("aria-label")).isNotBlank();
        }
    }

    @Test
    void aPanelWithASpotWithoutMetalIsDrawnFromItsEdge() throws Exception {
        assertThat(elements(parsed(), "svg").stream().map(svg -> svg.getAttribute("aria-label")))
                .anyMatch(words -> words.startsWith("Hood in section") && words.contains("no metal"));
    }

    @Test
    void aPhotoOfTwoZonesIsHeldOnceAndAFilmThatCannotBeShownSaysSo() throws Exception {
        List<Element> shown = elements(parsed(), "img");
        assertThat(shown.stream()
                        .filter(picture -> picture.getAttribute("class").isEmpty()))
                .as("among the zones")
                .hasSize(2);
        assertThat(shown.stream()
                        .filter(picture -> picture.getAttribute("class").equals("large")))
                .as("at what matters")
                .isNotEmpty();
        assertThat(shown.stream().map(picture -> picture.getAttribute("src")).distinct())
                .hasSize(2);
        assertThat(pdfText()).contains("Shown at ", "this moment cannot be shown on paper");
    }

    @Test
    void noPictureCarriesDataOfItsPhoto() throws Exception {
        List<byte[]> pictures = new ArrayList<>();
        Matcher found =
                Pattern.compile("data:image/jpeg;base64,([A-Za-z0-9+/=]+)").matcher(html());
        while (found.find()) {
            pictures.add(Base64.getDecoder().decode(found.group(1)));
        }
        try (PDDocument document = Loader.loadPDF(pdf())) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    if (page.getResources().getXObject(name) instanceof PDImageXObject image) {
                        assertThat(image.getMetadata()).isNull();
                        pictures.add(
                                image.createInputStream(List.of("DCTDecode")).readAllBytes());
                    }
                }
            }
        }
        assertThat(pictures)
                .as("two in the HTML, and each page of the PDF that shows one")
                .hasSizeGreaterThanOrEqualTo(4);
        for (byte[] picture : pictures) {
            for (Directory directory : ImageMetadataReader.readMetadata(new ByteArrayInputStream(picture))
                    .getDirectories()) {
                assertThat(directory.getName()).isIn(PLAIN_DIRECTORIES);
            }
        }
    }

    @Test
    void thePdfHasBookmarksPageNumbersAndTheFoot() throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf())) {
            List<String> names = new ArrayList<>();
            document.getDocumentCatalog().getDocumentOutline().children().forEach(item -> names.add(item.getTitle()));
            assertThat(names)
                    .contains("Summary", "Zones with something to say", "Marks and dates", "Gauge check", "Sources");
            assertThat(pdfText()).contains("Page 1 of " + document.getNumberOfPages(), "No gauge check was made");
            assertThat(document.getPage(0).getMediaBox().getWidth()).isBetween(594f, 597f);
        }
    }

    @Test
    void aCancelledReportLeavesNothingBehind(@TempDir Path empty) throws IOException {
        Progress stopped = new Progress() {
            @Override
            public void report(int done, int total, String what) {
                // the user has gone
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        ReportPages pages = TypedVisit.pages(TypedVisit.parts().record(), TypedVisit.colors());
        assertThatThrownBy(() -> pages.write(empty, Paper.LETTER, stopped)).isInstanceOf(CancellationException.class);
        try (Stream<Path> files = Files.list(empty)) {
            assertThat(files).isEmpty();
        }
    }
}
