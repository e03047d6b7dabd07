package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is too little to tell is not told as if it were something: intervals of two spots, dates that fit by chance. */
class StatedDoubtTest {
    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void aVisit() {
        bench = new Bench(folder);
        visit = folder.resolve("visit").toString();
        bench.run("new", visit, "--car", "Tamarisk", "--style", "coupe", "--built", "1971-03")
                .done();
    }

    private static JsonNode row(JsonNode rows, String key, String value) {
        for (JsonNode row : rows) {
            if (row.get(key).asText().equals(value)) {
                return row;
            }
        }
        throw new AssertionError(value + " is not in " + rows);
    }

    private String line(String out, String start) {
        return out.lines().filter(one -> one.startsWith(start)).findFirst().orElseThrow();
    }

    /** By Student with one degree of freedom: 200 +- 12.706 x 100 for 100 and 300 um, 102 +- 12.706 x 2 for 100 and 104. */
    @Test
    void anIntervalThatReachesBelowZeroIsKeptInFilesAndNotPrinted() {
        String readings = "zone,value,unit\nroof,100,um\nroof,300,um\nhood,100,um\nhood,104,um\n";
        bench.run("add", "readings", visit, bench.file("r.csv", readings)).done();
        String out = bench.run("zones", visit).done().out();
        assertThat(line(out, "roof")).contains("too few spots for an interval").doesNotContain("-1071", "1471");
        assertThat(line(out, "hood")).contains("77 to 127").doesNotContain("too few");
        JsonNode zones = bench.run("zones", visit, "--json").done().json().get("zones");
        assertThat(row(zones, "zone", "roof").get("ci95_low_um").asDouble()).isBetween(-1071.0, -1070.0);
    }

    /** A year of one digit comes round every ten years. */
    @Test
    void besideADateThatFitsStandsHowOftenItWouldByChance() {
        String marks = "part,kind,text\nblock,casting,1B18\nplate,tag,1971-03-12\n";
        bench.run("add", "marks", visit, bench.file("m.csv", marks)).done();
        JsonNode found = bench.run("dates", visit, "--json").done().json().get("marks");
        assertThat(chance(found, "block")).isBetween(5, 8);
        assertThat(chance(found, "plate")).isBetween(0, 3);
    }

    private static int chance(JsonNode marks, String part) {
        JsonNode mark = row(marks, "part", part);
        assertThat(mark.get("verdict").asText()).as("%s", mark).isEqualTo("fits");
        String said = mark.toString();
        assertThat(said).contains("By chance alone");
        String number = said.replaceAll("(?s).*would fit (under 1|\\d+) of 100 cars.*", "$1");
        return number.equals("under 1") ? 0 : Integer.parseInt(number);
    }
}
