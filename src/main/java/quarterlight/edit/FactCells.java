package quarterlight.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import quarterlight.table.cell.NumberText;
import quarterlight.visit.VisitFacts;

/** The facts of a visit as tables tell them: every key by which they are set, with choices and single zones, and units where a key has none. */
final class FactCells {
    private FactCells() {}

    /** Every key of {@link FactEdits#keys}, then one key per zone that is made of something else than the car. */
    static Map<String, String> of(VisitFacts facts) {
        Map<String, String> cells = new LinkedHashMap<>(FactTexts.of(facts));
        cells.put("gauge-range", NumberText.of(facts.gaugeRange().um()) + " um");
        cells.put("gauge-correction", facts.choices().gaugeCorrection() ? "yes" : "no");
        cells.put("terms", facts.choices().terms().orElse(""));
        cells.put("limits", facts.choices().limits().orElse(""));
        cells.put("report", facts.choices().length().word());
        cells.put(DiagramEdits.KEY, facts.choices().diagram().orElse(""));
        new TreeMap<>(facts.car().substrates()).forEach((zone, made) -> cells.put("substrate." + zone, made.word()));
        return cells;
    }
}
