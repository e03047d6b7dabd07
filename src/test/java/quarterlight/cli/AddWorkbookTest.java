package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.store.VisitStore;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeValue;

/** Sheets of workbooks and tables with several readings in a row, by {@code add}. */
class AddWorkbookTest {
    @TempDir
    Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void makeAVisit() {
        bench = new Bench(folder);
        visit = bench.visit();
    }

    private static String stored(String name) throws Exception {
        return Path.of(AddWorkbookTest.class
                        .getResource("/quarterlight/table/workbook/" + name)
                        .toURI())
                .toString();
    }

    private String csv(String text) throws Exception {
        return Files.writeString(folder.resolve("readings.csv"), text).toString();
    }

    private List<String> readings() throws Exception {
        try (VisitStore store = VisitStore.openForReading(Path.of(visit))) {
            return store.read().readings().stream()
                    .map(Recorded::value)
                    .map(r -> r.zone() + " "
                            + (r.value() instanceof GaugeValue.Measured m
                                    ? m.typed().toPlainString() + " " + m.unit().word()
                                    : "?"))
                    .toList();
        }
    }

    @Test
    void aSheetIsAddedLikeATable() throws Exception {
        bench.run("add", "readings", visit, stored("readings.xlsx")).done();
        assertThat(readings()).containsExactly("hood 4.2 mil", "roof 4.2 mil", "door-front-left 115 um");
    }

    @Test
    void ofSeveralSheetsOneIsNamed() throws Exception {
        bench.run("add", "readings", visit, stored("several.xlsx")).complains(2, "\"Paint\", \"Second car\"");
        assertThat(readings()).isEmpty();
        bench.run("add", "readings", visit, stored("several.xlsx"), "--sheet", "Second car")
                .done();
        assertThat(readings()).containsExactly("roof 5.5 mil");
        bench.run("add", "readings", visit, csv("zone,value,unit\nhood,4,mil\n"), "--sheet", "Second car")
                .complains(2, "no workbook");
    }

    @Test
    void severalReadingsInARowAreEachAReading() throws Exception {
        bench.run("add", "readings", visit, stored("several-in-a-row-1904.xlsx"))
                .done();
        assertThat(readings())
                .containsExactly("hood 4.2 mil", "hood 4.3 mil", "hood 4.1 mil", "roof 5.5 mil", "roof 5.75 mil");
    }

    @Test
    void aBadReadingOfARowIsRefusedWithItsLine() throws Exception {
        bench.run("add", "readings", visit, csv("zone,unit,1,2\nhood,mil,4.2,4.4\nroof,mil,5,soft\n"))
                .complains(2, "line 3, column value");
        bench.run("add", "readings", visit, csv("zone,unit,1,2\nhood,mil,4.2,4.4\nroof,mil,,\n"))
                .complains(2, "line 3, column value");
        bench.run("add", "readings", visit, csv("zone,unit,1,3\nhood,mil,4.2,4.4\n"))
                .complains(2, "no column \"1\"");
        assertThat(readings()).isEmpty();
    }

    @Test
    void aTableOfAnotherProgramMayHaveThemToo() throws Exception {
        bench.run(
                        "add",
                        "readings",
                        visit,
                        csv("Panel;1;2;3\nhood;120,5;118;121\nroof;98;;97\n"),
                        "--profile",
                        "wide",
                        "--columns",
                        "zone=Panel,value=value")
                .done();
        assertThat(readings()).hasSize(5).contains("hood 120.5 um", "roof 97 um");
        bench.run(
                        "add",
                        "readings",
                        visit,
                        stored("log-of-a-gauge.xlsx"),
                        "--profile",
                        "log",
                        "--columns",
                        "zone=Panel,value=Thickness,unit=Unit,time=Taken",
                        "--zones",
                        "Door=door-front-left")
                .complains(2, "3");
    }
}
