package quarterlight.page.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.language.Language;
import quarterlight.language.Sentences;
import quarterlight.page.PagesChoice;
import quarterlight.page.print.Paper;

/** What a page says comes from the bundles of sentences: made in the marked language, nothing else may stand between the marks. */
class StraySentencesTest {
    /** Words of the program that still come from no bundle, on the pages of the visit below. This number may only become smaller. */
    private static final int STILL_STRAY = 0;

    private static final Pattern WORDS = Pattern.compile("\\b[a-z]{2,} [a-z]{2,}\\b");
    private static final Pattern ATTRIBUTE = Pattern.compile("\\b(?:title|alt|aria-label)=\"([^\"]*)\"");

    @TempDir
    Path folder;

    @Test
    void everySentenceOfTheReportComesFromABundle() throws Exception {
        PagesChoice choice = PagesChoice.on(Paper.A4).said(Language.MARKED);
        List<Path> made = Language.MARKED.during(() -> MadePages.of(OddVisits.EMPTY.visit(), folder, choice));
        assertThat(made).isNotEmpty();
        Set<String> strays = new TreeSet<>();
        for (String page : List.of("report.html", "diagram.svg")) {
            String text = Files.readString(folder.resolve(page));
            assertThat(text).contains(Sentences.MARK).contains(Sentences.MARK_END);
            ATTRIBUTE.matcher(text).results().forEach(found -> stray(found.group(1), strays));
            String seen = text.replaceAll("(?s)<style.*?</style>", "").replaceAll("(?s)<[^>]*>", "\n");
            unmarked(seen).lines().forEach(line -> stray(line, strays));
        }
        strays.removeIf(text -> text.startsWith("Quarterlight "));
        assertThat(strays).hasSize(STILL_STRAY);
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

    private static void stray(String text, Set<String> strays) {
        if (WORDS.matcher(unmarked(text)).find()) {
            strays.add(text.strip());
        }
    }

    /** What stands outside of all marks; they may hold each other. */
    private static String unmarked(String text) {
        StringBuilder outside = new StringBuilder();
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == Sentences.MARK.charAt(0)) {
                depth++;
            } else if (letter == Sentences.MARK_END.charAt(0)) {
                depth = Math.max(0, depth - 1);
            } else if (depth == 0) {
                outside.append(letter);
            }
        }
        return outside.toString();
    }
}
