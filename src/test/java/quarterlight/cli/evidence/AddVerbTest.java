package quarterlight.cli.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.cli.Bench;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;

class AddVerbTest {
    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void openABench() {
        bench = new Bench(folder);
        visit = bench.visit();
    }

    @Test
    void goodRowsOfEveryKindGoIn() {
        add("readings", "zone,value,unit\nroof,4.5,mil\nhood,none,um\n", "Added 2 readings.");
        add("gauge", "when,on,nominal,shown,unit\nbefore,bare,0,0.1,mil\n", "Added 1 gauge check.");
        add("pins", "photo,zone\none.jpg,hood\n", "Added 1 pin.");
        add("signs", "zone,sign,seen\nroof,overspray,yes\n", "Added 1 sign.");
        add(
                "traces",
                "photo;kind;outline;scale\n"
                        + "two.jpg;surface;POLYGON ((10 10, 90 10, 90 90, 10 10));length:0 0 100 0:50\n",
                "Added 1 trace.");
        add("marks", "part,kind,text\nblock,casting,A247\n", "Added 1 mark.");
        add("trials", "item,result\nheater,not tried\n", "Added 1 trial.");
        add("statements", "zone,kind,text\nroof,sound,Straight.\n", "Added 1 statement.");
        add("features", "feature,from,to\nside lamps,1970,1971-03\n", "Added 1 feature.");
        add(
                "traces",
                "photo;kind;outline;scale\ntwo.jpg;surface;POLYGON ((10 10, 90 10, 90 90, 10 10));"
                        + "coin:0 50 50 0 100 50 50 100 85.36 85.36:24.26\n",
                "Added 1 trace.");
        add("notes", "photo;shape;points\ntwo.jpg;arrow;10 10, 90 90\n", "Added 1 note.");
        add("hidden", "photo;outline\ntwo.jpg;POLYGON ((10 10, 90 10, 90 90, 10 10))\n", "Added 1 hidden region.");
        add("coverage", "evidence,want\nspots,4\n", "Added 1 coverage override.");
        add("left-out", "zone\nroof\n", "Added 1 thing left out.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            notes | photo;shape;points | two.jpg;arrow;10 10, 99999 90 | column points: the note at (99999, 90) lies outside
            notes | photo;shape;points | two.jpg;box;10 10, 10 90 | column points: the two points of the note
            notes | photo;shape;points;scale | two.jpg;measure;10 10, 80 90;length:0 0 0.5 0:50 | column scale: the two ends
            notes | photo;shape;points;scale | two.jpg;measure;10 10, 80 90;length:0 0 0 99999:50 | column scale: the scale's mark
            hidden | photo;outline | two.jpg;POLYGON ((0 0, 50 50, 50 0, 0 50, 0 0)) | column outline: the outline crosses
            hidden | photo;outline | two.jpg;POLYGON ((0 0, 99999 0, 0 50, 0 0)) | column outline: the outline at (99999, 0)
            traces | photo;kind;outline;scale | two.jpg;hole;POLYGON ((10 10, 90 10, 90 90, 10 10));coin:0 0 1 1 2 2 3 3 4 4:20 | column scale: the marks on the coin's rim
            """)
    void whatIsDrawnWhereItCannotBeIsRefusedAtItsCell(String kind, String header, String row, String reason) {
        bench.run("add", kind, visit, bench.file("x.csv", header + "\n" + row + "\n"))
                .complains(2, "x.csv, line 2, " + reason, "nothing was added");
    }

    private void add(String kind, String csv, String said) {
        Bench.Outcome outcome =
                bench.run("add", kind, visit, bench.file(kind + ".csv", csv)).done();
        assertThat(outcome.out()).startsWith(said);
    }

    @Test
    void aBadRowIsRefusedAndNothingGoesIn() {
        String file = bench.file("r.csv", "zone,value,unit\nroof,4.5,mil\nruf,5,mil\nhood,x,mil\n");
        String before = bench.state(visit);
        bench.run("add", "readings", visit, file)
                .complains(
                        2,
                        "r.csv, line 3, column zone: there is no zone \"ruf\"",
                        "first of 2 refused rows",
                        "nothing was added");
        assertThat(bench.state(visit)).isEqualTo(before);
    }

    @Test
    void withJsonAllRefusedRowsStandInTheDocument() {
        String file = bench.file("r.csv", "zone,value,unit\nroof,4.5,mil\nruf,5,mil\nhood,x,mil\nhood,5\n");
        JsonNode json = bench.run("add", "readings", visit, file, "--json")
                .complains(2, "line 3", "first of 3")
                .json();
        assertThat(json.get("added").asInt()).isZero();
        assertThat(json.get("refused")).hasSize(3);
        assertThat(json.get("refused").get(1).get("line").asInt()).isEqualTo(4);
        assertThat(json.get("refused").get(1).get("column").asText()).isEqualTo("value");
        assertThat(json.get("refused").get(2).get("column").isNull()).isTrue();
        assertThat(json.get("refused").get(2).get("reason").asText()).contains("2 cells");
    }

    @Test
    void withKeepGoodTheOthersGoInAndTheStatusIsOne() throws VisitProblem {
        String file = bench.file("r.csv", "zone,value,unit\nroof,4.5,mil\nruf,5,mil\n");
        JsonNode json = bench.run("add", "readings", visit, file, "--keep-good", "--json")
                .complains(1, "line 3", "1 in all")
                .json();
        assertThat(json.get("added").asInt()).isEqualTo(1);
        assertThat(json.get("refused")).hasSize(1);
        try (VisitStore store = VisitStore.openForReading(Path.of(visit))) {
            assertThat(store.read().readings()).hasSize(1);
        }
    }

    @Test
    void aTableThatIsUnusableAsAWholeIsRefusedEvenWithKeepGood() {
        String before = bench.state(visit);
        String file = bench.file("r.csv", "zone,value,unit,tiem\nroof,4.5,mil,\n");
        JsonNode json = bench.run("add", "readings", visit, file, "--keep-good", "--json")
                .complains(2, "no column \"tiem\"")
                .json();
        assertThat(json.get("refused").get(0).get("line").asInt()).isEqualTo(1);
        assertThat(bench.state(visit)).isEqualTo(before);
    }

    @Test
    void equalRowsAreAddedAgainWithARemark() {
        String file = bench.file("r.csv", "zone,value,unit\nroof,4.5,mil\n");
        bench.run("add", "readings", visit, file).done();
        assertThat(bench.run("add", "readings", visit, file).done().out())
                .contains("1 reading equals a row that the visit had already");
        assertThat(bench.run("zones", visit, "--json")
                        .done()
                        .json()
                        .get("zones")
                        .get(0)
                        .get("readings")
                        .asInt())
                .isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            POLYGON ((10 10, 90 90, 90 10, 10 90, 10 10)) | length:0 0 100 0:50 | outline | crosses or touches itself
            POLYGON ((10 10, 1602 10, 90 90, 10 10)) | length:0 0 100 0:50 | outline | outside the photo
            POLYGON ((10 10, 90 10, 90 90, 10 10)) | length:0 0 1700 0:50 | scale | outside the photo
            POLYGON ((10 10, 90 10, 90 90, 10 10)) | rectangle:0 0 50 0 100 0 0 60:85.6 x 53.98 | scale | on one line
            """)
    void aTraceThatCannotBeMeasuredIsRefused(String outline, String scale, String column, String reason) {
        String before = bench.state(visit);
        String file = bench.file("t.csv", "photo;kind;outline;scale\ntwo.jpg;surface;" + outline + ";" + scale + "\n");
        bench.run("add", "traces", visit, file).complains(2, "t.csv, line 2, column " + column + ":", reason);
        assertThat(bench.state(visit)).isEqualTo(before);
    }

    @Test
    void badCallsAreRefused() {
        String file = bench.file("r.csv", "zone,value,unit\nroof,4.5,mil\n");
        String before = bench.state(visit);
        bench.run("add", "reading", visit, file).complains(2, "no kind of table \"reading\"", "nearest is readings");
        bench.run("add", "readings", visit).complains(2, "FILE must be given");
        bench.run("add", "readings", visit, folder.resolve("absent.csv").toString())
                .complains(2, "absent.csv is not there");
        bench.run("add", "readings", visit, folder.toString()).complains(2, "is a folder");
        bench.run("add", "readings", visit, file, "more").complains(2, "unexpected argument \"more\"");
        bench.run("add", "readings", folder.resolve("nowhere").toString(), file).complains(3, "no visit at");
        assertThat(bench.state(visit)).isEqualTo(before);
    }

    @Test
    void aVisitThatIsBeingEditedIsRefused() throws VisitProblem {
        String file = bench.file("r.csv", "zone,value,unit\nroof,4.5,mil\n");
        try (VisitStore held = VisitStore.openForEditing(Path.of(visit), Bench.CLOCK)) {
            bench.run("add", "readings", visit, file).complains(3, "is being edited elsewhere");
            assertThat(held.read().readings()).isEmpty();
            bench.run("zones", visit).done();
        }
    }
}
