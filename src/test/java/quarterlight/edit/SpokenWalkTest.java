package quarterlight.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.caption.WordsUnreadable;
import quarterlight.car.Car;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.fact.FactEdits;
import quarterlight.table.TableUnreadable;
import quarterlight.table.ZoneTable;
import quarterlight.table.json.DraftsJson;
import quarterlight.table.list.LexiconTable;
import quarterlight.words.Draft;

/** The words of a walk from files to drafts, with the user's own lists. */
class SpokenWalkTest {
    private static final ZoneCatalog ZONES = ZoneTable.load();

    @TempDir
    private Path folder;

    private static Car car() throws EditRefused {
        return new FactEdits(ZONES)
                .start(Map.of("car", "Larkspur", "style", "coupe"), ZoneId.of("America/Denver"))
                .car();
    }

    private SpokenWalk walk(String text) throws Exception {
        Path file = Files.writeString(folder.resolve("walk.txt"), text);
        return SpokenWalk.of(List.of(file), car(), ZONES, folder);
    }

    @Test
    void draftsCarryTheirFileTheirSecondAndEveryKeyOfTheContract() throws Exception {
        SpokenWalk walk = walk("[0:03] Left front fender is dented.\n[0:09] Overspray on the trunk floor.\n");
        JsonNode drafts =
                new ObjectMapper().readTree(DraftsJson.of(walk.drafts()).text()).get("drafts");
        JsonNode first = drafts.get(0);
        assertThat(first.get("source").asText()).isEqualTo("walk.txt");
        assertThat(first.get("at_s").asDouble()).isEqualTo(3);
        assertThat(first.get("zones").get(0).asText()).isEqualTo("fender-left");
        assertThat(first.get("condition").asText()).isEqualTo("damaged");
        for (String key : List.of(
                "id",
                "until_s",
                "what",
                "origin",
                "item",
                "result",
                "part",
                "kind",
                "text",
                "expected",
                "low_um",
                "high_um",
                "sign",
                "seen",
                "value",
                "unit",
                "said_by",
                "certainty",
                "size",
                "words",
                "p",
                "because",
                "withdrawn")) {
            assertThat(first.has(key)).as(key).isTrue();
        }
        assertThat(first.get("origin").isNull()).isTrue();
        assertThat(drafts.findValuesAsText("seen")).contains("true");
    }

    @Test
    void ownNamesAndPhrasesAreReadBesideTheProgramsOwn() throws Exception {
        assertThat(walk("[0:01] Snoot is gribbled.\n").drafts()).isEmpty();
        Files.writeString(folder.resolve(LexiconTable.PARTS), "part,zones,names,region,when\nhood,hood,snoot,outer,\n");
        Files.writeString(
                folder.resolve(LexiconTable.CUES), "kind,value,phrases,weight\ncondition,damaged,gribbl*,1\n");
        Draft draft = walk("[0:01] Snoot is gribbled.\n").drafts().get(0);
        assertThat(draft.zones()).hasToString("[hood]");
        Files.writeString(folder.resolve(LexiconTable.HOMOPHONES), "heard,meant\nzorn,hood\n");
        assertThat(walk("[0:01] Zorn is dented.\n").drafts().get(0).zones()).hasToString("[hood]");
    }

    @Test
    void anOwnListThatCannotBeUsedIsRefusedWithItsLine() throws Exception {
        Files.writeString(
                folder.resolve(LexiconTable.CUES), "kind,value,phrases,weight\nsomething,damaged,gribbled,1\n");
        assertThatThrownBy(() -> walk("[0:01] hood\n"))
                .isInstanceOf(TableUnreadable.class)
                .hasMessageContaining("column kind");
        Files.writeString(
                folder.resolve(LexiconTable.CUES), "kind,value,phrases,weight\ncondition,damaged,gribbled,2\n");
        assertThatThrownBy(() -> walk("[0:01] hood\n")).hasMessageContaining("column weight");
        Files.writeString(
                folder.resolve(LexiconTable.CUES), "kind,value,phrases,weight\ncondition,gribbled,gribbled,1\n");
        assertThatThrownBy(() -> walk("[0:01] hood\n")).hasMessageContaining("column value");
    }

    @Test
    void wordsWithoutTimesAreRefused() {
        assertThatThrownBy(() -> walk("Left front fender is dented.\n")).isInstanceOf(WordsUnreadable.class);
    }

    @Test
    void remarksNameTheFile() throws Exception {
        assertThat(walk("[0:09] hood\n[0:01] roof\n").remarks()).hasSize(1).allMatch(r -> r.startsWith("walk.txt: "));
    }
}
