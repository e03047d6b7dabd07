package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.finish.number.JudgedNumber;

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

    /** A panel of filler beyond doubt, one as built, and one that hangs on a judged number. */
    @Test
    void nothingIsZeroOrAHundredAndWhatAFindingHangsOnIsNamed() {
        String readings =
                """
                zone,value,unit
                hood,60,mil
                hood,61,mil
                hood,60,mil
                hood,62,mil
                door-front-left,5.6,mil
                door-front-left,5.8,mil
                door-front-left,5.7,mil
                roof,5.0,mil
                roof,5.2,mil
                """;
        String signs =
                """
                zone,sign,seen
                hood,weak-magnet,yes
                hood,ripple,yes
                door-front-left,texture-differs,yes
                roof,texture-differs,no
                """;
        bench.run("set", visit, "finish=lacquer").done();
        bench.run("add", "readings", visit, bench.file("r.csv", readings)).done();
        bench.run("add", "signs", visit, bench.file("g.csv", signs)).done();
        String out = bench.run("history", visit).done().out();
        for (String zone : List.of("hood", "door-front-left", "roof")) {
            assertThat(line(out, zone).split("\\s+")).as(line(out, zone)).doesNotContain("0", "100");
        }
        assertThat(line(out, "hood")).contains("over 99", "under 1");
        JsonNode zones = bench.run("history", visit, "--json").done().json().get("zones");
        Set<String> numbers =
                Stream.of(JudgedNumber.values()).map(JudgedNumber::word).collect(Collectors.toSet());
        for (String zone : List.of("hood", "door-front-left", "roof")) {
            JsonNode hangs = row(zones, "zone", zone).get("hangs_on");
            assertThat(numbers).contains(hangs.get("number").asText());
            boolean turns = hangs.get("refinish_if_low").asDouble() < .5
                    != hangs.get("refinish_if_high").asDouble() < .5;
            assertThat(hangs.get("would_turn").asBoolean()).as(zone).isEqualTo(turns);
            String told = zone + ": would turn with " + hangs.get("meaning").asText();
            assertThat(out.contains(told)).as(told).isEqualTo(turns);
        }
        assertThat(row(zones, "zone", "hood").at("/hangs_on/would_turn").asBoolean())
                .isFalse();
        assertThat(row(zones, "zone", "door-front-left")
                        .at("/hangs_on/would_turn")
                        .asBoolean())
                .isTrue();
    }
}
