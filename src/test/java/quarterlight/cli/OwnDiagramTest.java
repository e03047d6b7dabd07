package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.cli.call.Exit;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.NominalAreas;
import quarterlight.diagram.PlainDiagram;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.fact.DiagramEdits;
import quarterlight.edit.fact.FactEdits;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
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
        assertThat(Path.of(visit, "diagrams/mine.svg"))
                .hasSameBinaryContentAs(folder.resolve("settings/diagrams/mine.svg"));
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
    void areasAndPagesComeFromIt() throws Exception {
        bench.run("set", visit, "diagram=mine").done();
        double hood = NominalAreas.of(diagram(), facts().car().dimensions())
                .get(new ZoneId("hood"))
                .mm2();
        Rectangle2D cell = diagram().view(View.TOP).orElseThrow().zones().stream()
                .filter(shape -> shape.zone().orElseThrow().value().equals("hood"))
                .findFirst()
                .orElseThrow()
                .path()
                .getBounds2D();
        assertThat(hood)
                .as("a cell of the grid, times the factor for crown and edge in diagrams/zone-areas.csv")
                .isCloseTo(1.03 * cell.getWidth() * cell.getHeight(), Percentage.withPercentage(0.01));
        bench.run("pages", visit).done();
        String page = Files.readString(Path.of(visit, "pages/diagram.svg"));
        assertThat(page.split("Z\"", -1).length).as("outlines of rectangles").isGreaterThan(50);
        assertThat(Path.of(visit, "pages/diagram.pdf")).isNotEmptyFile();
    }

    @Test
    void undoBringsBackTheDrawingOfBeforeAlsoUnderTheSameName() throws Exception {
        Path other = Files.createDirectories(folder.resolve("elsewhere")).resolve("mine.svg");
        Files.copy(Path.of(System.getProperty("quarterlight.basedir", "."), "diagrams/wagon.svg"), other);
        DiagramEdits edits = new DiagramEdits(folder.resolve("settings/diagrams"), ZoneTable.load());
        FactEdits facts = new FactEdits(ZoneTable.load());
        double plain = PlainDiagram.file(BodyStyle.WAGON).views().get(0).widthMm();
        try (VisitStore store = VisitStore.openForEditing(Path.of(visit), Clock.systemUTC())) {
            edits.set(store, facts, Map.of(DiagramEdits.KEY, "mine"));
            assertThat(width(store)).isEqualTo(plain);
            edits.set(store, facts, Map.of(DiagramEdits.KEY, other.toString()));
            assertThat(store.read().facts().choices().diagram()).contains("mine-2");
            double second = width(store);
            assertThat(second).isNotEqualTo(plain);
            store.undo();
            assertThat(width(store)).isEqualTo(plain);
            store.redo();
            assertThat(width(store)).isEqualTo(second);
            edits.set(store, facts, Map.of(DiagramEdits.KEY, "mine"));
            assertThat(store.read().facts().choices().diagram())
                    .as("the same drawing once more")
                    .contains("mine");
        }
        assertThat(bench.run("audit", visit, "--json").done().json().get("unreferenced"))
                .isEmpty();
    }

    private static double width(VisitStore store) throws Exception {
        return VisitDiagram.of(store.folder().root(), store.read().facts())
                .views()
                .get(0)
                .widthMm();
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
        byte[] before = Files.readAllBytes(Path.of(visit, "diagrams/mine.svg"));
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
        assertThat(Files.readAllBytes(Path.of(visit, "diagrams/mine.svg"))).isEqualTo(before);
        assertThat(facts().client()).isEmpty();
    }

    @Test
    void aChosenDiagramThatIsGoneIsToldInOneSentence() throws Exception {
        bench.run("set", visit, "diagram=mine").done();
        Files.delete(Path.of(visit, "diagrams/mine.svg"));
        bench.run("suggest", visit)
                .complains(Exit.UNUSABLE, "diagrams/mine.svg", "\"mine\" was chosen", "diagram=shipped");
    }
}
