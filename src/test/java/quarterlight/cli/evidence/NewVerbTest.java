package quarterlight.cli.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.cli.Bench;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.VisitFacts;

class NewVerbTest {
    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void openABench() {
        bench = new Bench(folder);
    }

    private String path(String name) {
        return folder.resolve(name).toString();
    }

    private VisitFacts facts(String visit) throws VisitProblem {
        try (VisitStore store = VisitStore.openForReading(Path.of(visit))) {
            return store.read().facts();
        }
    }

    @Test
    void aNewVisitHasTheUsualFactsUnlessOthersAreGiven() throws VisitProblem {
        JsonNode json = bench.run("new", path("v"), "--car", "Haverell Fenlark", "--style", "pickup", "--json")
                .done()
                .json();
        assertThat(json.get("construction").asText()).isEqualTo("body-on-frame");
        assertThat(json.get("timezone").asText()).isEqualTo("America/Denver");
        assertThat(facts(path("v")).car().finish().word()).isEqualTo("unknown");
        bench.run(
                        "new",
                        path("w"),
                        "--car=x",
                        "--style=coupe",
                        "--year=1971",
                        "--built=1971-04",
                        "--finish=lacquer",
                        "--engine=rear",
                        "--substrate=fiberglass",
                        "--drive=right",
                        "--timezone=Europe/Lisbon",
                        "--construction=subframe")
                .done();
        assertThat(facts(path("w")).timezone().getId()).isEqualTo("Europe/Lisbon");
        assertThat(facts(path("w")).car().body().engine().word()).isEqualTo("rear");
        assertThat(facts(path("w")).car().modelYear()).hasValue(1971);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            --style coupe | --car must be given
            --car x | --style must be given
            --car x --style hatch | coupe, sedan, convertible, wagon, pickup
            --car x --style coupe --year 71 | year
            --car x --style coupe --built 1971-02-30 | built
            --car x --style coupe --finish gloss | lacquer, enamel, modern, unknown
            --car x --style coupe --timezone Nowhere/Else | Nowhere/Else
            --car x --style coupe --timezone | --timezone needs a value
            --car x --style coupe --color red | no option "--color"
            --car x --style coupe --style sedan | --style
            """)
    void aCallThatCannotBeMakesNoVisit(String options, String reason) {
        String[] words = ("new " + path("v") + " " + options).split(" ");
        bench.run(words).complains(2, reason);
        assertThat(folder.resolve("v")).doesNotExist();
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void anExistingPathIsRefusedAndLeftAlone() throws IOException {
        String visit = bench.visit();
        String before = bench.state(visit);
        bench.run("new", visit, "--car", "x", "--style", "coupe").complains(2, "exists already");
        assertThat(bench.state(visit)).isEqualTo(before);
        Path file = Files.writeString(folder.resolve("file"), "mine");
        bench.run("new", file.toString(), "--car", "x", "--style", "coupe").complains(2, "exists already");
        assertThat(file).hasContent("mine");
    }

    @Test
    void factsAreSetAndCleared() throws VisitProblem {
        String visit = bench.visit();
        bench.run(
                        "set",
                        visit,
                        "inspector=R. Quillfeather",
                        "date=2026-05-02",
                        "gauge-range=1500",
                        "substrate.hood=aluminum")
                .done();
        assertThat(facts(visit).inspector()).contains("R. Quillfeather");
        assertThat(facts(visit).gaugeRange().um()).isEqualTo(1500);
        JsonNode json = bench.run("set", visit, "inspector=", "--json").done().json();
        assertThat(json.get("set").get(0).asText()).isEqualTo("inspector");
        assertThat(facts(visit).inspector()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            colour=red | The facts are car, style
            inspector | KEY=VALUE
            date=02.05.2026 | date
            gauge-range=-5 | gauge-range
            wheelbase-mm=2.74 | wheelbase-mm
            substrate.tailgate=steel | tailgate
            style=hatch | coupe, sedan
            car= | car
            """)
    void aFactThatCannotBeChangesNothing(String word, String reason) {
        String visit = bench.visit();
        String before = bench.state(visit);
        bench.run("set", visit, "client=The Otterby family", word).complains(2, reason);
        assertThat(bench.state(visit)).isEqualTo(before);
        bench.run("set", visit).complains(2, "KEY=VALUE must be given");
    }
}
