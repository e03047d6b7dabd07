package quarterlight.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterlight.edit.fact.FactEdits;
import quarterlight.store.SampleVisit;
import quarterlight.table.ZoneTable;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.fact.Facts;

/** Facts go out as the keys by which they come in. */
class FactCellsTest {
    private final FactEdits edits = new FactEdits(ZoneTable.load());

    @Test
    void factsSetByTheirCellsAreTheFacts() throws Exception {
        for (VisitFacts facts : List.of(SampleVisit.bareFacts(), SampleVisit.fullFacts())) {
            Map<String, String> cells = new LinkedHashMap<>(Facts.cells(facts));
            cells.keySet()
                    .removeIf(key ->
                            !key.startsWith("substrate.") && !edits.keys().contains(key));
            VisitFacts again = edits.start(cells, ZoneId.of("Asia/Tokyo"));
            Map<String, String> wanted = new LinkedHashMap<>(Facts.cells(facts));
            wanted.replaceAll((key, value) -> cells.containsKey(key) ? value : "");
            assertThat(Facts.cells(again)).isEqualTo(wanted);
            assertThat(again.car()).isEqualTo(facts.car());
            assertThat(again.gaugeRange()).isEqualTo(facts.gaugeRange());
        }
    }

    @Test
    void noKeyIsForgotten() {
        assertThat(Facts.cells(SampleVisit.bareFacts()).keySet())
                .containsAll(edits.keys().stream()
                        .filter(key -> !key.contains("ZONE"))
                        .toList());
    }
}
