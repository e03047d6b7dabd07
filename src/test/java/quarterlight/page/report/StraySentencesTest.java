package quarterlight.page.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.language.Language;
import quarterlight.language.Sentences;
import quarterlight.language.StrayWords;
import quarterlight.page.PagesChoice;
import quarterlight.page.print.Paper;
import quarterlight.visit.VisitRecord;

/** What a page says comes from the bundles of sentences: made in the marked language, nothing else may stand between the marks. */
class StraySentencesTest {
    @TempDir
    Path folder;

    /** A visit with something of nearly every kind, on the screen and in print. */
    @Test
    void everySentenceOfThePagesComesFromABundle() throws Exception {
        PagesChoice choice = PagesChoice.on(Paper.A4).said(Language.MARKED);
        VisitRecord visit = OddVisits.PICKUP.visit();
        List<Path> made = Language.MARKED.during(() -> MadePages.of(visit, folder, choice));
        assertThat(made).hasSizeGreaterThan(3);
        assertThat(Files.readString(folder.resolve("report.html"))).contains(Sentences.MARK, Sentences.MARK_END);
        for (Path page : made) {
            assertThat(StrayWords.in(page, visit + " Quarterlight build dev"))
                    .as("words of %s that come from no bundle", page.getFileName())
                    .isEmpty();
        }
    }

    @Test
    void aGermanReportIsGermanThroughout() throws Exception {
        PagesChoice choice = PagesChoice.on(Paper.A4).said(Language.GERMAN);
        Language.GERMAN.during(() -> MadePages.of(OddVisits.EMPTY.visit(), folder, choice));
        String text = Files.readString(folder.resolve("report.html"));
        assertThat(text)
                .contains(
                        "<html lang=\"de\">",
                        "Worauf es ankommt",
                        "Fahrzeugskizze",
                        "Was nicht geprüft wurde",
                        "Motorhaube")
                .doesNotContain("What matters", "Not looked at", "Body diagram", "Page ");
    }
}
