package quarterlight.cli.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.cli.WalkedVisit.visit;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;

/** What a walk leaves open, against itself and against the rows of the visit. */
class ListenDoubtsTest {
    private static final String WALK =
            """
            [0:03] Left rear wheel arch, I'll come back to that.
            [0:10] Left rocker is rusted through.
            [0:20] Hood, fourteen to sixteen mils.
            [0:30] The horn does not work.
            [0:40] Odometer shows sixty one thousand four hundred miles.
            [0:50] The cowl is sound.
            """;

    @TempDir
    private Path folder;

    private Bench bench() {
        return new Bench(folder);
    }

    private static List<JsonNode> list(JsonNode document, String key) {
        List<JsonNode> all = new ArrayList<>();
        document.get(key).forEach(all::add);
        return all;
    }

    private static void add(Bench bench, String visit, String kind, String rows) {
        bench.run("add", kind, visit, bench.file(kind + ".csv", rows)).done();
    }

    @Test
    void whatWasNotSaidStandsBesideTheDraftsAndAmongTheGaps() {
        Bench bench = bench();
        String visit = visit(bench);
        assertThat(list(bench.run("gaps", visit, "--json").done().json(), "not_said"))
                .isEmpty();
        bench.run("words", visit, bench.file("walk.txt", WALK)).done();
        JsonNode listen = bench.run("listen", visit, "--json").done().json();
        List<JsonNode> unsaid = list(listen, "not_said");
        JsonNode promise = unsaid.get(0);
        assertThat(promise.get("what").asText()).isEqualTo("promise");
        assertThat(promise.get("zones").get(0).asText()).isEqualTo("wheel-lip-rear-left");
        assertThat(promise.get("source").asText()).isEqualTo("walk.txt");
        assertThat(promise.get("at_s").asDouble()).isBetween(3.0, 9.0);
        assertThat(unsaid)
                .filteredOn(one -> one.get("what").asText().equals("other-side"))
                .anyMatch(one -> one.get("zones").toString().contains("rocker-right"));
        assertThat(unsaid)
                .filteredOn(one -> one.get("what").asText().equals("never-spoken-of"))
                .allMatch(one -> one.get("at_s").isNull() && !one.get("group").isNull());
        assertThat(list(bench.run("gaps", visit, "--json").done().json(), "not_said"))
                .isEqualTo(unsaid);
        assertThat(bench.run("listen", visit).done().out()).contains("Not said:", "nothing of it follows", "0:0");
        assertThat(bench.run("gaps", visit).done().out()).contains("rocker-right: only the other side was spoken of");
    }

    /** A zone that has a photo is no gap of words: only what lacks all else is named among the gaps. */
    @Test
    void gapsNameNoZoneThatWasShownThoughNeverSpokenOf() {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run("words", visit, bench.file("walk.txt", WALK)).done();
        assertThat(bench.run("gaps", visit).done().out()).contains("never spoken of");
        String before = bench.run("gaps", visit).done().out();
        add(bench, visit, "statements", "zone,condition,text\nroof,no rust,None seen on the roof.\n");
        String after = bench.run("gaps", visit).done().out();
        assertThat(line(before, "outer")).contains("roof");
        assertThat(line(after, "outer")).doesNotContain("roof");
    }

    private static String line(String out, String group) {
        return out.lines()
                .filter(line -> line.strip().startsWith("never spoken of, " + group))
                .findFirst()
                .orElse("");
    }

    @Test
    void wordsMeetClaimsPapersReadingsAndTrials() {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run("words", visit, bench.file("walk.txt", WALK)).done();
        assertThat(contradictions(bench, visit)).isEmpty();
        add(
                bench,
                visit,
                "claims",
                """
                text,by
                The hood has never been painted.,seller
                Everything works.,owner
                There is no rust anywhere.,seller
                """);
        add(bench, visit, "odometer", "figure,unit,source\n82000,mi,papers\n");
        add(bench, visit, "readings", "zone,value,unit\nhood,4.2,mil\nhood,4.6,mil\n");
        List<JsonNode> found = contradictions(bench, visit);
        assertThat(found)
                .extracting(one -> one.get("about").asText())
                .contains("finish", "function", "condition", "odometer", "thickness");
        JsonNode odometer = found.stream()
                .filter(one -> one.get("about").asText().equals("odometer"))
                .findFirst()
                .orElseThrow();
        assertThat(odometer.get("first").get("at_s").asDouble()).isBetween(40.0, 49.0);
        assertThat(odometer.get("second").get("table").asText()).isEqualTo("odometer");
        assertThat(odometer.get("second").get("row").asLong()).isPositive();
        assertThat(odometer.get("second").get("at_s").isNull()).isTrue();
        assertThat(bench.run("listen", visit).done().out())
                .contains("Against each other:", "A paper has more miles than the odometer shows now.");
    }

    private static List<JsonNode> contradictions(Bench bench, String visit) {
        return list(bench.run("listen", visit, "--json").done().json(), "contradictions");
    }

    @Test
    void aKeptDraftCountsOnceAndADroppedOneNotAtAll() {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run("words", visit, bench.file("walk.txt", WALK)).done();
        add(bench, visit, "claims", "text,by\nThere is no rust anywhere.,seller\n");
        assertThat(contradictions(bench, visit)).hasSize(1);
        String rocker = rocker(bench, visit);
        bench.run("listen", visit, "--keep", rocker).done();
        assertThat(contradictions(bench, visit)).hasSize(1);
        String other = bench.folder("other");
        bench.run("new", other, "--car", "Larkspur", "--style", "coupe", "--timezone", "UTC")
                .done();
        bench.run("words", other, bench.file("walk.txt", WALK)).done();
        add(bench, other, "claims", "text,by\nThere is no rust anywhere.,seller\n");
        assertThat(contradictions(bench, other)).hasSize(1);
        bench.run("listen", other, "--drop", rocker(bench, other)).done();
        assertThat(contradictions(bench, other)).isEmpty();
    }

    private static String rocker(Bench bench, String visit) {
        return list(bench.run("listen", visit, "--json").done().json(), "drafts").stream()
                .filter(draft -> draft.get("what").asText().equals("statement")
                        && draft.get("zones").toString().contains("rocker-left"))
                .map(draft -> draft.get("id").asText())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void stampsMeetTheNumberOfTheCar() {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run("words", visit, bench.file("walk.txt", "[0:05] The seller says it's a matching numbers car.\n"))
                .done();
        add(
                bench,
                visit,
                "marks",
                """
                part,kind,text,zone
                car,vin,194377S104512,identity-papers
                engine pad,stamp,V104512,engine
                """);
        assertThat(contradictions(bench, visit)).isEmpty();
        add(bench, visit, "marks", "part,kind,text,zone\ngearbox,stamp,S204417,transmission\n");
        assertThat(contradictions(bench, visit))
                .singleElement()
                .matches(one -> one.get("second").get("text").asText().contains("S204417")
                        && one.get("why").asText().contains("104512"));
    }
}
