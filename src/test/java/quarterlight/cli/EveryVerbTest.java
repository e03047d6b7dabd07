package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every verb, whatever it does: help, refusals as JSON, quiet. */
class EveryVerbTest {
    /** They print a text for the system and no document. */
    private static final Set<String> WITHOUT_JSON = Set.of("desk", "completion", "man");

    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void openABench() {
        bench = new Bench(folder);
    }

    static List<String> verbs() {
        return Verbs.NAMES;
    }

    static List<String> verbsWithJson() {
        return Verbs.NAMES.stream().filter(verb -> !WITHOUT_JSON.contains(verb)).toList();
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void helpIsGivenWhateverElseStandsInTheCall(String verb) {
        String nowhere = folder.resolve("nowhere").toString();
        String help = bench.run(verb, "--help").done().out();
        assertThat(help).startsWith("Usage: quarterlight " + verb);
        assertThat(bench.run("help", verb).done().out()).isEqualTo(help);
        assertThat(bench.run(verb, "-h").done().out()).isEqualTo(help);
        assertThat(bench.run(verb, nowhere, "--help").done().out()).isEqualTo(help);
        assertThat(bench.run(verb, "--quiet", "--help").done().out()).isEqualTo(help);
        assertThat(folder).isEmptyDirectory();
    }

    @ParameterizedTest
    @MethodSource("verbsWithJson")
    void aRefusedCallIsOneDocumentThatSaysTheSame(String verb) throws Exception {
        for (String[] call : List.of(
                new String[] {verb, "--json", "--no-such-option"},
                new String[] {verb, "a", "b", "c", "d", "--json", "--no-such-option"})) {
            Bench.Outcome refused = bench.run(call).complains(2, verb);
            JsonNode error = new ObjectMapper().readTree(refused.out()).get("error");
            assertThat(error.get("exit").asInt()).isEqualTo(2);
            assertThat(refused.err().strip())
                    .isEqualTo("quarterlight: " + error.get("sentence").asText());
        }
    }

    @ParameterizedTest
    @MethodSource("verbsWithJson")
    void whatIsNoVisitAndNoFileIsRefusedAsADocument(String verb) throws Exception {
        Path plain = Files.createDirectory(folder.resolve("plain"));
        String nowhere = folder.resolve("nowhere/at/all").toString();
        for (String[] call : List.of(
                new String[] {verb, nowhere, "--json"},
                new String[] {verb, nowhere, nowhere, "--json"},
                new String[] {verb, plain.toString(), nowhere, "--json"},
                new String[] {verb, "readings", nowhere, nowhere, "--json"})) {
            Bench.Outcome outcome = bench.run(call);
            assertThat(outcome.out()).as(String.join(" ", call)).startsWith("{").endsWith("}\n");
            JsonNode document = outcome.json();
            assertThat(document.has("error"))
                    .as(String.join(" ", call) + outcome.err())
                    .isEqualTo(outcome.status() >= 2);
        }
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void quietSaysNothingWhereNothingIsWrong(String verb) {
        Bench.Outcome outcome = bench.run(verb, "--quiet");
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().isEmpty()).as(outcome.err()).isEqualTo(outcome.status() == 0);
    }
}
