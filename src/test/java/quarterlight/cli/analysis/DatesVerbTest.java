package quarterlight.cli.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;

class DatesVerbTest {
    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void aVisitWithMarks() throws Exception {
        bench = new Bench(folder);
        visit = bench.visit();
        bench.run("set", visit, "built=1971-03").done();
        String marks = bench.file(
                "marks.csv",
                """
                part,kind,text,stage,pattern,lead_days
                Block,casting,1B18,cast,,
                Alternator,stamp,3F14,assembled,,
                Axle,casting,0A05,cast,,450
                Heater,tag,71/B/18,,shop,
                """);
        String own = bench.file("date-patterns.csv", "name,form\nshop,{yy}/{M}/{d}\n");
        bench.run("add", "marks", visit, marks).done();
        Files.delete(Path.of(own));
    }

    private static JsonNode mark(JsonNode document, int i) {
        return document.get("marks").get(i);
    }

    @Test
    void theDocumentHasTheKeysThatToolsRelyOn() {
        JsonNode document = bench.run("dates", visit, "--json").done().json();
        JsonNode block = mark(document, 0);
        assertThat(block.get("part").asText()).isEqualTo("Block");
        assertThat(block.get("kind").asText()).isEqualTo("casting");
        assertThat(block.get("text").asText()).isEqualTo("1B18");
        assertThat(block.get("verdict").asText()).isEqualTo("fits");
        assertThat(block.get("why").asText()).contains("Feb 18, 1971", "11 days before");
        assertThat(block.get("candidates").get(0).get("from").asText()).isEqualTo("1971-02-18");
        assertThat(block.get("candidates").get(0).get("to").asText()).isEqualTo("1971-02-18");
        assertThat(block.get("candidates").get(0).get("pattern").asText()).isEqualTo("year-letter-day");
        assertThat(mark(document, 1).get("verdict").asText()).isEqualTo("too late");
        assertThat(mark(document, 2).get("verdict").asText()).as("its own lead").isEqualTo("fits");
        assertThat(document.get("contradictions")).hasSize(1);
        assertThat(document.get("build_window").get("from").asText()).isEqualTo("1971-03-01");
    }

    @Test
    void theTextNamesWhatDoesNotGoTogether() {
        assertThat(bench.run("dates", visit).done().out())
                .contains("Built Mar 1971 as claimed", "Contradictions:", "Alternator, 3F14: too late")
                .contains("question, not proof");
    }

    @Test
    void patternsOfOnesOwnComeFromAFileOrTheFolderOfSettings() {
        assertThat(mark(bench.run("dates", visit, "--json").done().json(), 3)
                        .get("verdict")
                        .asText())
                .isEqualTo("cannot tell");
        String own = bench.file("own.csv", "name,form\nshop,{yy}/{M}/{d}\n");
        assertThat(mark(
                                bench.run("dates", visit, "--json", "--patterns", own)
                                        .done()
                                        .json(),
                                3)
                        .get("verdict")
                        .asText())
                .isEqualTo("fits");
        bench.file("date-patterns.csv", "name,form\nshop,{yy}/{M}/{d}\n");
        assertThat(mark(bench.run("dates", visit, "--json").done().json(), 3)
                        .get("verdict")
                        .asText())
                .isEqualTo("fits");
    }

    @Test
    void aPatternThatIsNoneIsRefusedWithItsLine() {
        String own = bench.file("own.csv", "name,form\nshop,{yy}{letter}\n");
        bench.run("dates", visit, "--patterns", own).complains(2, "own.csv", "line 2", "{letter}");
        bench.run("dates", visit, "--patterns", folder.resolve("none.csv").toString())
                .complains(2, "none.csv");
    }

    @Test
    void aVisitWithoutMarksSaysWhatToDo() {
        bench.run("new", folder.resolve("bare").toString(), "--car", "Bare", "--style", "coupe")
                .done();
        assertThat(bench.run("dates", folder.resolve("bare").toString()).done().out())
                .contains("No build date", "No marks yet. Add them with: add marks");
    }

    @Test
    void gapsSayTheStateOfZonesAndWhatWasNotTried() {
        JsonNode document = bench.run("gaps", visit, "--json").done().json();
        assertThat(document.get("zones").size()).isGreaterThan(50);
        assertThat(document.get("zones").findValuesAsText("state")).contains("missing");
        assertThat(document.get("untried").findValuesAsText("item")).contains("Headlamps", "Driven on the road");
    }
}
