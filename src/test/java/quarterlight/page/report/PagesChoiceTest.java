package quarterlight.page.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.language.Language;
import quarterlight.page.PagesChoice;
import quarterlight.page.print.Paper;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.ReportLength;

/** What is asked of the pages holds on every one of them. */
class PagesChoiceTest {
    /** The glossary says what a micrometer is in mil. */
    private static final String GLOSSARY = "25\\.4 are one mil";

    private static final Pattern MIL = Pattern.compile("\\bmil\\b");

    @TempDir
    Path folder;

    private static String text(Path file) throws Exception {
        if (!file.toString().endsWith(".pdf")) {
            return Files.readString(file).replaceAll("data:[a-z/]+;base64,[A-Za-z0-9+/=]+", "");
        }
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static String around(int at, Path file) {
        try {
            String text = text(file).replaceAll(GLOSSARY, "");
            return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 30));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void oneUnitHoldsOnEveryPage() throws Exception {
        List<Path> made = MadePages.of(
                OddVisits.PICKUP.visit(), folder, PagesChoice.on(Paper.A4).in(Optional.of(ThicknessUnit.UM)));
        for (Path file : made) {
            assertThat(MIL.matcher(text(file).replaceAll(GLOSSARY, ""))
                            .results()
                            .map(found -> around(found.start(), file))
                            .toList())
                    .as("mil in %s, asked for in micrometers", file.getFileName())
                    .isEmpty();
        }
        assertThat(text(folder.resolve("report.pdf"))).contains("\u00b5m");
    }

    @Test
    void theShortReportIsTheFirstPageTheDiagramAndWhatMatters() throws Exception {
        MadePages.of(
                OddVisits.PICKUP.visit().reported(ReportLength.SHORT),
                folder,
                new PagesChoice(Paper.A4, Optional.empty(), true, Language.ENGLISH));
        for (String file : List.of("report.pdf", "report.html")) {
            assertThat(text(folder.resolve(file)))
                    .contains("Body diagram", "What matters, in full", "A short report, as chosen by the inspector")
                    .doesNotContain("Zones with something to say", "Appendix", "What is missing", "photo 1,");
        }
    }

    @Test
    void pagesNameProgramAndRules() throws Exception {
        MadePages.of(OddVisits.EMPTY.visit(), folder, PagesChoice.on(Paper.A4));
        assertThat(text(folder.resolve("report.pdf")))
                .contains("Made by Quarterlight", "model of finish history version", "rule of what matters version");
        assertThat(text(folder.resolve("diagram.pdf"))).contains("Quarterlight ");
        assertThat(text(folder.resolve("diagram.svg"))).contains("Quarterlight ");
    }
}
