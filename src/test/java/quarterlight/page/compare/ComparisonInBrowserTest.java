package quarterlight.page.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import quarterlight.Axe;
import quarterlight.Browser;
import quarterlight.page.print.Paper;

/** The comparison on the screen in a real browser: nobody is shut out, and nothing runs over the side, at every width, in light, dark and print. */
class ComparisonInBrowserTest {
    @TempDir
    private static Path folder;

    private static Browser browser;
    private static Browser.Tab tab;

    @BeforeAll
    static void make() throws Exception {
        browser = Browser.start(folder.resolve("profile"));
        ComparedCars.pages(folder, Paper.A4, ComparedCars.two());
        tab = browser.open(folder.resolve("compare.html"), "");
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
}
