package quarterlight.edit.spoken;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.edit.EditRefused;
import quarterlight.table.list.LexiconTable;
import quarterlight.words.Draft;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.weigh.Weights;

/** What confirmed and dropped drafts teach: kept in the settings, readable, and gone when forgotten. */
class DraftTeachingTest {
    private static final List<String> FEATURES = List.of("place-named", "condition-damaged", "cue-fair");

    @TempDir
    private Path settings;

    private static Draft draft() {
        return new Draft(
                "a1",
                "walk.vtt",
                1,
                3,
                DraftKind.STATEMENT,
                List.of(),
                Map.of(Facet.CONDITION, "damaged"),
                "left fender is dented",
                0.5,
                List.of("\u201cdented\u201d: damaged"),
                FEATURES,
                false);
    }

    private double p() throws Exception {
        return LexiconTable.weights(settings).p(DraftKind.STATEMENT, FEATURES);
    }

    @Test
    void keptOnesMakeTheNextLikelierAndDroppedOnesLess() throws Exception {
        double before = p();
        DraftTeaching teaching = new DraftTeaching(settings);
        teaching.teach(List.of(draft()), List.of());
        double kept = p();
        assertThat(kept).isGreaterThan(before);
        teaching.teach(List.of(), List.of(draft(), draft()));
        assertThat(p()).isLessThan(kept);
    }

    @Test
    void whatWasLearnedNamesEachFeatureAndCanBeForgotten() throws Exception {
        DraftTeaching teaching = new DraftTeaching(settings);
        double before = p();
        teaching.teach(List.of(draft()), List.of());
        assertThat(teaching.learned()).containsKeys("place-named", "statement+condition-damaged");
        teaching.forget();
        assertThat(teaching.learned()).isEmpty();
        assertThat(p()).isEqualTo(before);
    }

    @Test
    void theShippedWeightsStayAsTheyAre() throws Exception {
        Weights shipped = LexiconTable.weights();
        new DraftTeaching(settings).teach(List.of(), List.of(draft()));
        assertThat(LexiconTable.weights()).isEqualTo(shipped);
    }

    @Test
    void aFileThatWasSpoiledIsRefusedWithTheWayOut() throws Exception {
        Files.writeString(settings.resolve(LexiconTable.LEARNED), "feature,weight\nplace-named,lots\n");
        assertThatThrownBy(() -> new DraftTeaching(settings).learned())
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("lots")
                .hasMessageContaining("forget");
    }
}
