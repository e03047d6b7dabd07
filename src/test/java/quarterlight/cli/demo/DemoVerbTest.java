package quarterlight.cli.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;
import quarterlight.cli.DemoOnce;
import quarterlight.task.Progress;

class DemoVerbTest {
    private static final Path DEMO_DATA =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("demo-data");

    @TempDir
    private Path folder;

    @Test
    void theDemoIsBuiltWholeAndOnceAndItsVisitsHold() throws Exception {
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
        bench.run("set", a, "client=someone else").done();
        String before = bench.state(a);
        DemoVisits again = new DemoVisits(bench.around());
        assertThat(again.in(Path.of(demo), Progress.NONE))
                .extracting(DemoVisits.Made::held)
                .containsExactly(Optional.empty(), Optional.empty());
        assertThat(bench.state(a)).as("a visit that is there is kept").isEqualTo(before);
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

    @Test
    void aVisitMadeBeforeIsOnlyOpenedForTheClassesOfAStart() {
        Bench bench = new Bench(folder);
        String visit = folder.resolve("made").toString();
        bench.run("new", visit, "--car", "Sorrel", "--style", "coupe", "--timezone", "UTC")
                .done();
        String before = bench.state(visit);
        Path place = folder.resolve("classes.place");
        bench.run("demo", visit, "--rehearse", place.toString()).done();
        assertThat(bench.state(visit)).isEqualTo(before);
        assertThat(place).as("without a window").doesNotExist();
    }
}
