package quarterlight.ui.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.cli.compare.ComparisonJson;
import quarterlight.compare.RandomCars;
import quarterlight.compare.TestCar;
import quarterlight.compare.matter.CarEvidence;
import quarterlight.compare.matter.Care;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.RowText;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.page.HtmlValidator;
import quarterlight.page.compare.CarPage;
import quarterlight.page.compare.ComparisonPages;
import quarterlight.page.print.Paper;
import quarterlight.ui.kit.Texts;

/** Every row of the first part stands, cell by cell and in its order, in the window, the page, the HTML and the JSON, in the same words. */
class FourOutputsPropertyTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {7, 19})
    void everyCellOfTheFirstPartStandsInAllFour(long seed) throws Exception {
        RandomCars chance = new RandomCars(seed);
        ComparisonSheet sheet = TestCar.sheet(Care.NONE, chance.next("A"), chance.next("B"), TestCar.rottenTruck());
        assertThat(sheet.heavy()).isNotEmpty();
        new ComparisonPages(sheet, pages(sheet), 0, 1).write(folder, Paper.LETTER);
        String html = plain(Files.readString(folder.resolve("compare.html"))
                .replaceAll("(?s)<style>.*?</style>", "")
                .replaceAll("<[^>]*>", " ")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&"));
        assertThat(HtmlValidator.objections(Files.readAllBytes(folder.resolve("compare.html"))))
                .isEmpty();
        String pdf;
        try (PDDocument document = Loader.loadPDF(folder.resolve("compare.pdf").toFile())) {
            pdf = plain(new PDFTextStripper().getText(document));
        }
        String json = plain(ComparisonJson.of(sheet).text().replace("\\\"", "\""));
        String window = plain(String.join(" ", words(sheet)));
        inOrder(sheet, html, "HTML, seed " + seed);
        inOrder(sheet, json, "JSON, seed " + seed);
        inOrder(sheet, window, "window, seed " + seed);
        for (RowText row : sheet.heavy()) {
            for (RowText.CellText cell : row.cells()) {
                // a column of a page may be broken by the line of another: its words stand there all the same
                for (String word : plain(cell.text()).split(" ")) {
                    assertThat(pdf).as("page, seed %d: %s", seed, cell.text()).contains(word);
                }
            }
        }
    }

    /** Each cell's class and text, one after the other, none before the one above it. */
    private static void inOrder(ComparisonSheet sheet, String output, String where) {
        int at = 0;
        for (RowText row : sheet.heavy()) {
            for (RowText.CellText cell : row.cells()) {
                String text = plain(cell.text());
                int kind = output.indexOf(cell.kind().word(), at);
                if (kind < 0) {
                    kind = output.indexOf(cell.label(), at);
                }
                assertThat(kind)
                        .as("%s: %s of %s", where, cell.label(), row.place())
                        .isNotNegative();
                int found = output.indexOf(text, at);
                assertThat(found).as("%s: %s", where, cell.text()).isNotNegative();
                at = found + text.length();
            }
        }
    }

    private static List<CarPage> pages(ComparisonSheet sheet) throws Exception {
        List<CarPage> pages = new ArrayList<>();
        for (CarEvidence car : sheet.table().cars()) {
            pages.add(new CarPage(
                    car.findings(),
                    DiagramFile.shipped(car.findings().visit().facts().car().body()),
                    (photo, px) -> Optional.empty(),
                    Map.of()));
        }
        return pages;
    }

    private static List<String> words(ComparisonSheet sheet) throws Exception {
        List<String> words = new ArrayList<>();
        SwingUtilities.invokeAndWait(() -> {
            MattersPane pane =
                    new MattersPane(Texts.load(), new CarPortraits((car, photo, px, arrived) -> {}), row -> {});
            pane.show(sheet);
            words.addAll(pane.words());
        });
        return words;
    }

    /** Without what lines and pages break and set apart. */
    private static String plain(String text) {
        return text.replaceAll("[\\s\\u00a0\\u2009\\u202f]+", " ").strip();
    }
}
