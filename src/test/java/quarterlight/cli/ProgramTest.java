package quarterlight.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProgramTest {
    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void openABench() {
        bench = new Bench(folder);
    }

    @Test
    void anUnknownVerbIsRefusedWithTheNearest() {
        bench.run("zoness").complains(2, "no verb \"zoness\"", "nearest is zones");
        bench.run("--nonsense").complains(2, "no option \"--nonsense\"");
    }

    @Test
    void nothingIsSuggestedWhereNothingIsNear() {
        assertThat(bench.run("xyzzy").complains(2, "no verb \"xyzzy\"").err()).doesNotContain("nearest");
        bench.run("hist").complains(2, "nearest is history");
    }

    @Test
    void anotherWordForAVerbLeadsToIt() {
        bench.run("open").complains(2, "no verb \"open\"", "you may mean desk");
        bench.run("import", "x").complains(2, "you may mean intake or add");
        bench.run("Report").complains(2, "you may mean pages");
    }

    @Test
    void aTableComesByStandardInput() {
        String visit = bench.visit();
        bench.runWith("zone,value,unit\nhood,5.1,mil\n".getBytes(UTF_8), "add", "readings", visit, "-")
                .done();
        bench.runWith("zone,value,unit\nbonnet,5.1,mil\n".getBytes(UTF_8), "add", "readings", visit, "-")
                .complains(2, "standard input", "no zone \"bonnet\"", "nearest is hood");
        bench.runWith("zone\nhood\nroof\n".getBytes(UTF_8), "lists", "walk", "--take", "-")
                .done();
        assertThat(bench.run("lists", "walk").done().out()).contains("hood", "roof");
        bench.runWith("<svg".getBytes(UTF_8), "diagram", "check", "-").complains(2, "standard input");
        bench.run("add", "readings", visit, "-").complains(2, "standard input");
    }

    @Test
    void aFolderThatIsThereIsRefusedBeforeAnythingElse() {
        bench.run("export", folder.resolve("nowhere").toString(), folder.toString())
                .complains(2, "exists already");
    }

    @Test
    void helpIsAVerbToo() {
        String all = bench.run("--help").done().out();
        assertThat(bench.run("help").done().out()).isEqualTo(all);
        assertThat(bench.run("help", "zones").done().out())
                .isEqualTo(bench.run("zones", "--help").done().out());
        bench.run("help", "zonez").complains(2, "no verb \"zonez\"", "nearest is zones");
    }

    @Test
    void aVisitIsNamedByItsFileToo() {
        String visit = folder.resolve("v").toString();
        bench.run("new", visit, "--style", "coupe", "--car", "1971 Sable Tamarisk")
                .done();
        String file = folder.resolve("v").resolve("visit.quarterlight").toString();
        assertThat(bench.run("zones", file).done().out())
                .isEqualTo(bench.run("zones", visit).done().out());
        bench.run("audit", visit).done();
        bench.run(file).done();
    }

    @Test
    void theVersionIsPrinted() {
        assertThat(bench.run("--version").done().out())
                .startsWith("Quarterlight ")
                .contains("Java ", "Apache License 2.0");
        assertThat(bench.run("-V").done().out())
                .isEqualTo(bench.run("--version").done().out());
    }

    @Test
    void aRefusedCallForJsonIsAnsweredInJson() throws java.io.IOException {
        Bench.Outcome refused = bench.run("zones", folder.resolve("nowhere").toString(), "--json");
        refused.complains(3, "no visit at");
        com.fasterxml.jackson.databind.JsonNode error = new com.fasterxml.jackson.databind.ObjectMapper()
                .readTree(refused.out())
                .get("error");
        assertThat(error.get("exit").asInt()).isEqualTo(3);
        assertThat(error.get("sentence").asText()).contains("There is no visit at");
        assertThat(bench.run("zones", "--json").complains(2, "VISIT").out()).contains("\"exit\" : 2");
        assertThat(bench.run("zones").complains(2, "VISIT").out()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"zones", "history", "rust", "photos", "audit"})
    void aVerbThatReadsRefusesWhatIsNoVisit(String verb) {
        bench.run(verb).complains(2, verb + ": VISIT", "must be given");
        bench.run(verb, folder.resolve("nowhere").toString()).complains(3, "no visit at");
        bench.run(verb, folder.toString(), "--json").complains(3, "no visit at");
        bench.run(verb, folder.toString(), "--jsn").complains(2, "no option \"--jsn\"");
        bench.run(verb, "").complains(2, "empty");
        bench.run(verb, "a\0b").complains(2, verb);
    }

    @ParameterizedTest
    @ValueSource(strings = {"clock", "photos", "add", "audit", "zones", "history", "rust"})
    void everyVerbSaysWhatItDoes(String verb) {
        String help = bench.run(verb, "--help").done().out();
        assertThat(help).contains("Usage: quarterlight " + verb).contains("--json");
        assertThat(bench.run("--help").done().out()).contains(verb);
    }

    @Test
    void aCallFindsEachVerbByItsName() {
        String all = bench.run("--help").done().out();
        for (String verb : Verbs.NAMES) {
            assertThat(all).contains("  " + verb + " ");
            assertThat(bench.run(verb, "--help").done().out()).startsWith("Usage: quarterlight " + verb + " ");
        }
    }

    @Test
    void aDiagramOfOnesOwnIsCheckedOrRefused() {
        bench.run("diagram", "draw", "x.svg").complains(2, "write diagram check FILE.svg");
        bench.run("diagram", "check").complains(2, "FILE.svg must be given");
        bench.run("diagram", "check", folder.resolve("absent.svg").toString()).complains(2, "absent.svg");
        bench.run("diagram", "check", bench.file("no.svg", "<svg")).complains(2, "no.svg");
    }

    @Test
    void theDatabaseOfAnotherProgramIsNoVisit() throws java.io.IOException {
        Path other = java.nio.file.Files.createDirectory(folder.resolve("other"));
        java.nio.file.Files.writeString(
                other.resolve("visit.db"), "this is no database at all, but long enough to look at");
        bench.run("zones", other.toString()).complains(3, "cannot be read");
    }
}
