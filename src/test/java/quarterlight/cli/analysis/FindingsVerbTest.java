package quarterlight.cli.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;

class FindingsVerbTest {
    @TempDir
    Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void aVisit() throws Exception {
        bench = new Bench(folder);
        visit = folder.resolve("v").toString();
        bench.run("new", visit, "--car", "Test car", "--style", "coupe", "--timezone", "UTC")
                .done();
        bench.run(
                        "add",
                        "statements",
                        visit,
                        bench.file(
                                "statements.csv",
                                "zone,condition,text,severity,private\nhood,damaged,Dented.,major,no\nroof,damaged,SECRET,grave,yes\n"))
                .done();
    }

    private JsonNode matter(String id, String... more) throws Exception {
        String[] call = new String[3 + more.length];
        call[0] = "findings";
        call[1] = visit;
        call[2] = "--json";
        System.arraycopy(more, 0, call, 3, more.length);
        for (JsonNode one : bench.run(call).done().json().get("matters")) {
            if (one.get("id").asText().equals(id)) {
                return one;
            }
        }
        throw new AssertionError("no " + id);
    }

    @Test
    void aSeveritySetHoldsWithItsReasonUntilItIsTakenBack() throws Exception {
        assertThat(matter("metal:hood").get("severity").asText()).isEqualTo("major");
        bench.run("findings", visit, "--set", "metal:hood=note", "--because", "polished out")
                .done();
        JsonNode set = matter("metal:hood");
        assertThat(set.get("severity").asText()).isEqualTo("note");
        assertThat(set.get("severity_by_rule").asText()).isEqualTo("major");
        assertThat(set.get("decision").get("reason").asText()).isEqualTo("polished out");
        assertThat(set.get("why").asText()).contains("polished out").contains("By rule major");
        bench.run("findings", visit, "--take-back", "metal:hood").done();
        assertThat(matter("metal:hood").get("severity").asText()).isEqualTo("major");
        assertThat(matter("metal:hood").get("decision").isNull()).isTrue();
    }

    @Test
    void whatIsFoundGraverThanWasDecidedOnIsNotHeldDown() throws Exception {
        bench.run("findings", visit, "--set", "metal:hood=note", "--because", "polished out")
                .done();
        bench.run(
                        "add",
                        "statements",
                        visit,
                        bench.file("more.csv", "zone,condition,text,severity\nhood,damaged,Torn open.,grave\n"))
                .done();
        JsonNode now = matter("metal:hood");
        assertThat(now.get("severity").asText()).isEqualTo("grave");
        assertThat(now.get("decision").get("holds").asBoolean()).isFalse();
        assertThat(now.get("why").asText()).contains("holds no more");
    }

    @Test
    void aDecisionSurvivesArchiveAndRestore() throws Exception {
        bench.run("findings", visit, "--set", "metal:hood=minor", "--because", "small")
                .done();
        bench.run("archive", visit, folder.resolve("a.zip").toString()).done();
        String back = folder.resolve("back").toString();
        bench.run("restore", folder.resolve("a.zip").toString(), back).done();
        visit = back;
        assertThat(matter("metal:hood").get("severity").asText()).isEqualTo("minor");
    }

    @Test
    void whatIsPrivateIsNotAmongWhatABuyerMaySee() throws Exception {
        assertThat(bench.run("findings", visit).done().out()).contains("SECRET");
        assertThat(bench.run("findings", visit, "--for-buyer").done().out())
                .contains("Dented.")
                .doesNotContain("SECRET");
    }

    @Test
    void whatCannotBeSetIsSaidInASentence() throws Exception {
        assertThat(bench.run("findings", visit, "--set", "metal:hood=bad", "--because", "x")
                        .err())
                .contains("grave");
        assertThat(bench.run("findings", visit, "--set", "metal:boot=note", "--because", "x")
                        .err())
                .contains("Nothing that matters is called metal:boot");
        assertThat(bench.run("findings", visit, "--set", "metal:hood=note").err())
                .contains("needs its reason");
        assertThat(bench.run("findings", visit, "--because", "x").err()).contains("--set");
    }
}
