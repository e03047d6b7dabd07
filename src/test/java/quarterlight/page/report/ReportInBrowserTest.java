package quarterlight.page.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import quarterlight.Axe;
import quarterlight.Browser;
import quarterlight.page.PagesChoice;
import quarterlight.page.print.Paper;

/** The report on the screen in a real browser: nobody is shut out, nothing runs over the side, and printed it takes about as many pages as the PDF. */
class ReportInBrowserTest {
    @TempDir
    private static Path folder;

    private static Browser browser;
    private static Browser.Tab tab;

    @BeforeAll
    static void make() throws Exception {
        browser = Browser.start(folder.resolve("profile"));
        MadePages.of(OddVisits.PICKUP.visit(), folder, PagesChoice.on(Paper.A4));
        tab = browser.open(folder.resolve("report.html"), "");
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/quarterlight/axe/looks.csv", numLinesToSkip = 1)
    void shutsNobodyOutAndFitsTheScreen(int width, String scheme, String media, String when) throws Exception {
        assumeTrue(when.equals("always") || Boolean.getBoolean("quarterlight.looks"), "on demand");
        tab.look(width, 900, scheme, media);
        assertThat(scheme.equals("dark") ? Axe.contrasts(tab) : Axe.violations(tab))
                .isEmpty();
        assertThat(Axe.runningOver(tab)).isEmpty();
    }

    @Test
    void printedItTakesAsManyPagesAsThePdfWithinAFifth() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("report.pdf").toFile());
                PDDocument printed = Loader.loadPDF(tab.printed())) {
            assertThat((double) printed.getNumberOfPages() / pdf.getNumberOfPages())
                    .isBetween(1 / 1.2, 1.2);
        }
    }

    @Test
    void aPageThatShutsPeopleOutIsTold() throws Exception {
        Path bad = folder.resolve("bad.html");
        Files.writeString(
                bad,
                """
                <!DOCTYPE html><html><head><title>bad</title></head><body><main>
                <h1>Bad</h1><img src="x.png"><p style="color: #CCC">pale</p>
                <p style="width: 3000px">broad</p></main></body></html>
                """);
        Browser.Tab open = browser.open(bad, "");
        open.look(360, 900, "light", "screen");
        assertThat(Axe.violations(open))
                .anySatisfy(line -> assertThat(line).contains("html-has-lang"))
                .anySatisfy(line -> assertThat(line).contains("image-alt"))
                .anySatisfy(line -> assertThat(line).contains("color-contrast"));
        assertThat(Axe.runningOver(open)).isNotEmpty();
    }
}
