package quarterlight.page.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import quarterlight.page.PdfValidator;

class PdfDocumentTest {
    private static final String PAGE =
            """
            <html lang="en"><head><title>A page</title><meta name="description" content="A page for a test"/>
            <bookmarks><bookmark name="Top" href="#top"/></bookmarks>
            <style>@page { size: 210mm 297mm; margin: 15mm; } body { font-family: 'Source Sans 3'; }</style></head>
            <body><h1 id="top">Quarter panel, left</h1><p>Mean 5.1\u2009mil, \u22120.2</p>
            <svg xmlns="http://www.w3.org/2000/svg" width="80" height="40" viewBox="0 0 80 40" role="img" alt="a drawing">
            <title>a drawing</title><rect width="80" height="40" fill="#0B6472"/><text x="4" y="20">7</text></svg>
            <table><thead><tr><th scope="col">Zone</th></tr></thead><tbody><tr><td>Hood</td></tr></tbody></table>
            </body></html>
            """;

    private static byte[] pdf() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfDocument.write(PAGE, out);
        return out.toByteArray();
    }

    @Test
    void passesTheReferenceValidatorForArchivingAndForAccessibility() throws Exception {
        byte[] pdf = pdf();
        assertThat(PdfValidator.objections(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
        assertThat(PdfValidator.objections(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    }

    @Test
    void textStaysText() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf())) {
            assertThat(new PDFTextStripper().getText(document)).contains("Quarter panel, left", "Hood");
        }
    }

    @Test
    void aPageThatIsNotTaggedIsObjectedTo() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument plain = new PDDocument()) {
            plain.addPage(new org.apache.pdfbox.pdmodel.PDPage());
            plain.save(out);
        }
        assertThat(PdfValidator.objections(out.toByteArray(), PDFAFlavour.PDFUA_1))
                .isNotEmpty();
    }
}
