package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.BodyStyle;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.DiagramFile;
import quarterlight.diagram.PlainDiagram;
import quarterlight.diagram.VisitDiagram;
import quarterlight.store.VisitStore;
import quarterlight.visit.VisitFacts;

/** A body diagram of one's own: chosen by name or path, checked, copied into the visit, used, and left again. */
class OwnDiagramTest {
    @TempDir
    Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void begin() throws IOException {
        bench = new Bench(folder);
        visit = folder.resolve("car").toString();
        bench.run("new", visit, "--car", "Tamarisk", "--style", "wagon", "--timezone", "UTC")
                .done();
        Files.createDirectories(folder.resolve("settings/diagrams"));
        Files.writeString(folder.resolve("settings/diagrams/mine.svg"), PlainDiagram.svg(BodyStyle.WAGON));
    }

    private VisitFacts facts() throws Exception {
        try (VisitStore store = VisitStore.openForReading(Path.of(visit))) {
            return store.read().facts();
        }
    }

    private BodyDiagram diagram() throws Exception {
        return VisitDiagram.of(Path.of(visit), facts());
    }

    @Test
    void oneFromTheFolderOfOwnDiagramsIsChosenByItsName() throws Exception {
        bench.run("set", visit, "diagram=mine").done();
        assertThat(facts().choices().diagram()).contains("mine");
        assertThat(Path.of(visit, "diagram.svg")).hasSameBinaryContentAs(folder.resolve("settings/diagrams/mine.svg"));
        assertThat(diagram().views().get(0).widthMm())
                .isEqualTo(PlainDiagram.file(BodyStyle.WAGON).views().get(0).widthMm());
        Files.delete(folder.resolve("settings/diagrams/mine.svg"));
        assertThat(diagram().zones())
                .as("the visit needs nothing outside itself")
                .isNotEmpty();
        assertThat(bench.run("audit", visit, "--json").done().json().get("unreferenced"))
                .isEmpty();
    }

    @Test
    void aFileIsChosenByItsPathAndShippedGoesBack() throws Exception {
        Path file = Files.writeString(folder.resolve("drawn.svg"), PlainDiagram.svg(BodyStyle.WAGON));
        bench.run("set", visit, "diagram=" + file, "drive=right").done();
        assertThat(facts().choices().diagram()).contains("drawn");
        bench.run("set", visit, "diagram=shipped").done();
        assertThat(facts().choices().diagram()).isEmpty();
        assertThat(diagram().views().get(0).widthMm())
                .isEqualTo(DiagramFile.shipped(BodyStyle.WAGON).views().get(0).widthMm());
    }

    @Test
    void aRefusedDiagramSaysWhatIsMissingAndChangesNothing() throws Exception {
        bench.run("set", visit, "diagram=mine").done();
        byte[] before = Files.readAllBytes(Path.of(visit, "diagram.svg"));
        String state = bench.state(visit);
        Path lacking = Files.writeString(
                folder.resolve("lacking.svg"),
                PlainDiagram.svg(BodyStyle.WAGON).replaceAll("<path[^>]*data-zone=\"hood\"[^>]*/>", ""));
        bench.run("set", visit, "diagram=" + lacking, "client=Nobody")
                .complains(Exit.UNUSABLE, "lacking.svg", "zone hood is drawn in no view", "diagram check");
        Path other = Files.writeString(folder.resolve("other.svg"), PlainDiagram.svg(BodyStyle.COUPE));
        bench.run("set", visit, "diagram=" + other)
                .complains(Exit.UNUSABLE, "other.svg", "a diagram of a coupe and the car is a wagon");
        bench.run("set", visit, "diagram=nowhere")
                .complains(Exit.UNUSABLE, "no diagram \"nowhere\"", "mine", "shipped");
        bench.run("set", visit, "diagram=mine", "year=never").complains(Exit.UNUSABLE, "year");
        assertThat(bench.state(visit)).isEqualTo(state);
        assertThat(Files.readAllBytes(Path.of(visit, "diagram.svg"))).isEqualTo(before);
        assertThat(facts().client()).isEmpty();
    }

    @Test
    void aChosenDiagramThatIsGoneIsToldInOneSentence() throws Exception {
        bench.run("set", visit, "diagram=mine").done();
        Files.delete(Path.of(visit, "diagram.svg"));
        bench.run("suggest", visit).complains(Exit.UNUSABLE, "diagram.svg", "\"mine\" was chosen", "diagram=shipped");
    }
}
