package quarterlight.cli.delivery;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;

class SheetVerbTest {
    @TempDir
    Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void makeAVisit() {
        bench = new Bench(folder);
        visit = bench.visit();
    }

    @Test
    void makesOneFileInTheVisitOrWhereItIsTold() throws Exception {
        bench.run("sheet", visit).done();
        try (PDDocument pdf = Loader.loadPDF(Path.of(visit, "sheet.pdf").toFile())) {
            assertThat(pdf.getNumberOfPages()).isLessThanOrEqualTo(2);
        }
        Path out = folder.resolve("other.pdf");
        assertThat(bench.run("sheet", visit, "--paper", "letter", "--out", out.toString(), "--json")
                        .json()
                        .get("paper")
                        .asText())
                .isEqualTo("letter");
        assertThat(out).isRegularFile();
    }

    @Test
    void nothingButAnEarlierPdfIsReplaced() throws Exception {
        Path database = Path.of(visit, "visit.db");
        byte[] before = Files.readAllBytes(database);
        bench.run("sheet", visit, "--out", database.toString()).complains(2, "is no PDF");
        assertThat(Files.readAllBytes(database)).isEqualTo(before);
        bench.run("sheet", visit, "--out", folder.toString()).complains(2, "is a folder");
        bench.run("sheet", visit, "--paper", "a5").complains(2, "sheet: there is no paper");
    }
}
