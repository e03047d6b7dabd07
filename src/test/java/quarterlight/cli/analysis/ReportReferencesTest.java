package quarterlight.cli.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;
import quarterlight.cli.TestPhotos;

/** A comparison says where a photo stands in the car's own report, as long as that report is of the visit as it is. */
class ReportReferencesTest {
    private static final Pattern LINKED = Pattern.compile("href=\"([^\"]*report\\.html#photo-1)\"");
    private static final Pattern PAGE = Pattern.compile("photo\\s+1,\\s+page\\s+(\\d+)");

    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;
    private String other;

    @BeforeEach
    void oneDentedCarAndOneOfWhichNothingIsKnown() {
        bench = new Bench(folder);
        visit = made("dented car");
        other = made("other");
        TestPhotos.write(folder.resolve("card/IMG_0.JPG"), 3, "2026:03:01 09:00:00");
        bench.run("intake", visit, folder.resolve("card").toString()).done();
        add("pins", "photo,zone,view,x,y,shows,caption\nIMG_0.JPG,hood,top,0.2,0.5,hood,Seen from the left fender\n");
        add("statements", "zone,condition,text,severity,photo\nhood,rusted through,Hood frame open.,grave,IMG_0.JPG\n");
    }

    private String made(String name) {
        String made = bench.folder(name);
        bench.run("new", made, "--car", name, "--style", "coupe", "--year", "1971", "--timezone", "UTC")
                .done();
        return made;
    }

    private void add(String kind, String rows) {
        bench.run("add", kind, visit, bench.file(kind + ".csv", rows)).done();
    }

    /** The HTML of a comparison, its blanks made plain. */
    private String compared(String one) throws IOException {
        Path out = folder.resolve("both");
        bench.run("compare", one, other, "--out", out.toString()).done();
        return Files.readString(out.resolve("compare.html")).replaceAll("[\\s\u00a0]+", " ");
    }

    private static String pdf(Path file, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PDFTextStripper text = new PDFTextStripper();
            text.setStartPage(page == 0 ? 1 : page);
            text.setEndPage(page == 0 ? document.getNumberOfPages() : page);
            return text.getText(document).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    @Test
    void aPhotoIsNamedWithItsPageAndLeadsToItsPlaceInTheReport() throws IOException {
        bench.run("pages", visit).done();
        String html = compared(visit);
        Matcher page = PAGE.matcher(html);
        assertThat(page.find()).as("photo 1, page n").isTrue();
        assertThat(pdf(Path.of(visit, "pages/report.pdf"), Integer.parseInt(page.group(1))))
                .as("that page of the report")
                .contains("Seen from the left fender");
        assertThat(PAGE.matcher(pdf(folder.resolve("both/compare.pdf"), 0)).results())
                .isNotEmpty()
                .allMatch(found -> found.group(1).equals(page.group(1)));
        Matcher link = LINKED.matcher(html);
        assertThat(link.find()).as("a link to the photo").isTrue();
        String[] address = link.group(1).split("#");
        Path led = Path.of(folder.resolve("both").toUri().resolve(address[0]));
        assertThat(led).isRegularFile();
        assertThat(Files.readString(led)).contains("id=\"" + address[1] + "\"");
    }

    @Test
    void withoutAReportAPhotoIsNamedByItsNumberAlone() throws IOException {
        assertNoPage(compared(visit));
    }

    @Test
    void aReportOfAnotherStateOfTheVisitTellsNoPage() throws IOException {
        bench.run("pages", visit).done();
        add("statements", "zone,condition,text\nroof,sound,Nothing there.\n");
        assertNoPage(compared(visit));
        bench.run("pages", visit).done();
        assertThat(PAGE.matcher(compared(visit)).find())
                .as("made anew, it does")
                .isTrue();
    }

    @Test
    void aReportThatCannotBeReadTellsNoPage() throws IOException {
        Files.createDirectories(Path.of(visit, "pages"));
        Files.writeString(Path.of(visit, "pages/report.pdf"), "photo 1, page 3");
        assertNoPage(compared(visit));
    }

    @Test
    void aVisitReceivedFromAnotherComputerBringsItsReport() throws IOException {
        bench.run("pages", visit).done();
        String back = bench.folder("received");
        bench.run("archive", visit, bench.folder("sent.zip")).done();
        bench.run("restore", bench.folder("sent.zip"), back).done();
        String html = compared(back);
        assertThat(PAGE.matcher(html).find()).as("photo 1, page n").isTrue();
        assertThat(html).contains("../received/pages/report.html#photo-1");
    }

    private static void assertNoPage(String html) {
        assertThat(html).contains("photo 1");
        assertThat(PAGE.matcher(html).find()).as("a page").isFalse();
        assertThat(html).doesNotContain("report.html");
    }
}
