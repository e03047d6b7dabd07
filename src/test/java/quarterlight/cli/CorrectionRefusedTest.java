package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A correction that was chosen and cannot be, such as a shim of 1 mil shown as 3, is told wherever thickness is. */
class CorrectionRefusedTest {
    private static final String TOLD = "no gauge that works is so far off";

    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void shimOfOneMilShownAsThree() {
        bench = new Bench(folder);
        visit = bench.folder("v");
        bench.run("new", visit, "--car", "Sorrel", "--style", "coupe", "--timezone", "UTC")
                .done();
        add("gauge", "when,on,nominal,shown,unit\nbefore,bare,0,0,mil\nbefore,shim,1,3,mil\n");
        add("readings", "zone,value,unit\nhood,5.1,mil\nhood,5.3,mil\nroof,5.0,mil\n");
    }

    private void add(String kind, String table) {
        try {
            bench.run(
                            "add",
                            kind,
                            visit,
                            Files.writeString(folder.resolve("t.csv"), table).toString())
                    .done();
        } catch (java.io.IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void nothingIsSaidWhileNoCorrectionIsChosen() {
        assertThat(bench.run("zones", visit).done().out()).doesNotContain(TOLD);
        assertThat(bench.run("zones", visit, "--json")
                        .done()
                        .json()
                        .get("correction_refused")
                        .isNull())
                .isTrue();
        assertThat(bench.run("history", visit).done().out()).doesNotContain(TOLD);
    }

    @Test
    void everyTableAndPageSaysThatTheReadingsStandAsTyped() throws Exception {
        bench.run("set", visit, "gauge-correction=yes").done();
        assertThat(bench.run("zones", visit).done().out()).contains(TOLD, "a factor of 0.33");
        assertThat(bench.run("zones", visit, "--json")
                        .done()
                        .json()
                        .get("correction_refused")
                        .asText())
                .contains(TOLD);
        assertThat(bench.run("history", visit).done().out()).contains(TOLD);
        assertThat(bench.run("pages", visit).status()).isZero();
        for (String page : new String[] {"diagram.svg", "report.html"}) {
            assertThat(Files.readString(Path.of(visit, "pages", page))
                            .replaceAll("<[^>]*>", " ")
                            .replaceAll("\\s+", " "))
                    .as(page)
                    .contains("no gauge that works is so far off");
        }
    }
}
