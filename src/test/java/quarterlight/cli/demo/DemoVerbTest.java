package quarterlight.cli.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;
import quarterlight.cli.DemoOnce;

class DemoVerbTest {
    private static final Path DEMO_DATA =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("demo-data");

    @TempDir
    private Path folder;

    @Test
    void theDemoIsBuiltWholeAndOnceAndItsVisitsHold() throws IOException {
        Bench bench = DemoOnce.bench(folder);
        String demo = folder.resolve("demo").toString();
        JsonNode json = DemoOnce.in(folder);
        assertThat(json.get("visits")).hasSize(2);
        assertThat(json.get("refused")).isEmpty();
        for (JsonNode page : json.get("pages")) {
            assertThat(Path.of(page.asText())).isNotEmptyFile();
        }
        String a = json.get("visits").get(0).asText();
        String b = json.get("visits").get(1).asText();
        assertThat(bench.run("audit", a, "--json").done().json().get("ok").asBoolean())
                .isTrue();
        assertThat(bench.run("photos", b, "--json").done().json().get("photos").size())
                .isGreaterThanOrEqualTo(60);
        assertThat(bench.run("compare", a, b, "--json").done().json().get("cars"))
                .hasSize(2);
        assertThat(bench.run("suggest", a, "--json").done().json().has("photos"))
                .isTrue();
        numbersAreRounded(bench, a, b);
        bench.run("set", a, "client=someone else").done();
        String before = bench.state(a);
        bench.run("demo", demo).done();
        assertThat(bench.state(a)).as("a visit that is there is kept").isEqualTo(before);
    }

    /** No number of any document has more digits than somebody could have measured. */
    private void numbersAreRounded(Bench bench, String a, String b) throws IOException {
        String export = folder.resolve("exported").toString();
        int numbers = 0;
        for (String verb :
                List.of("zones", "history", "rust", "findings", "dates", "suggest", "gaps", "photos", "listen")) {
            numbers +=
                    numbersAreRounded(verb, bench.run(verb, a, "--json").done().out());
        }
        numbers += numbersAreRounded(
                "compare", bench.run("compare", a, b, "--json").done().out());
        bench.run("export", a, export).done();
        numbers += numbersAreRounded("export", Files.readString(Path.of(export, "visit.json")));
        assertThat(numbers).isGreaterThan(1000);
    }

    private static int numbersAreRounded(String what, String document) throws IOException {
        int numbers = 0;
        try (JsonParser json = new ObjectMapper().createParser(document)) {
            for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
                if (token == JsonToken.VALUE_NUMBER_FLOAT) {
                    numbers++;
                    assertThat(json.getDecimalValue().stripTrailingZeros().precision())
                            .as(what + ": " + json.getText())
                            .isLessThanOrEqualTo(10);
                }
            }
        }
        return numbers;
    }

    @Test
    void withoutDemoDataOrAFolderNothingIsMade() throws IOException {
        new Bench(folder).run("demo", folder.resolve("demo").toString()).complains(2, "demo-data is missing");
        assertThat(folder.resolve("demo")).doesNotExist();
        Path file = Files.writeString(folder.resolve("file"), "mine");
        Bench bench = new Bench(folder).withDemoData(Files.createDirectory(folder.resolve("bare")));
        bench.run("demo", folder.resolve("demo").toString()).complains(2, "has no demo visit");
        assumeThat(DEMO_DATA).isDirectory();
        bench.withDemoData(DEMO_DATA).run("demo", file.toString()).complains(2, "is a file");
        assertThat(file).hasContent("mine");
    }
}
