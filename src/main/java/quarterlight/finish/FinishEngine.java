package quarterlight.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import quarterlight.car.FinishProfile;
import quarterlight.units.Thickness;

/**
 * Computes finish histories for one model and one profile. Making one costs some tens of milliseconds, so keep it for
 * further questions about the same car. Immutable, safe for several threads.
 */
public final class FinishEngine {
    private static final double UM_PER_MIL = 25.4;

    private final FinishGrid grid;

    public FinishEngine(FinishModel model, FinishProfile profile, GridSize size) {
        this.grid = new FinishGrid(model, profile, size);
    }

    public FinishEngine(FinishProfile profile) {
        this(FinishModel.V1, profile, GridSize.USUAL);
    }

    public FinishProfile profile() {
        return grid.profile;
    }

    /** @throws IllegalArgumentException if the evidence is of another profile, or of no zone */
    public FinishHistory history(FinishEvidence evidence) {
        return joint(evidence).history();
    }

    /**
     * The history with what ties the zones together.
     *
     * @throws IllegalArgumentException if the evidence is of another profile, or of no zone
     */
    public JointHistory joint(FinishEvidence evidence) {
        if (evidence.profile() != grid.profile || evidence.zones().isEmpty()) {
            throw new IllegalArgumentException("this engine is for profile " + grid.profile.word()
                    + " and for one zone at least, not for profile "
                    + evidence.profile().word() + " with " + evidence.zones().size());
        }
        List<ZoneEvidence> zones = evidence.zones();
        List<PanelTable> tables = new ArrayList<>();
        for (ZoneEvidence zone : zones) {
            tables.add(PanelTable.of(grid, zone, evidence.gaugeRange().um()));
        }
        List<ScenarioSums> sums = Arrays.stream(Scenario.values())
                .map(scenario -> ScenarioSums.of(grid, scenario, tables))
                .toList();
        List<ZoneHistory> histories = new ArrayList<>();
        for (int q = 0; q < zones.size(); q++) {
            histories.add(new ZoneOdds(grid.model, sums, q, tables.get(q)).history(zones.get(q)));
        }
        Map<Scenario, Double> scenarios = scenarios(sums);
        double mean = 0;
        double square = 0;
        for (ScenarioSums scenario : sums) {
            double weight = scenarios.get(scenario.cells().scenario);
            for (int g = 0; g < scenario.weights().length; g++) {
                double um =
                        UM_PER_MIL * Math.exp(grid.level.log(scenario.cells().levelPoint(g)));
                mean += weight * scenario.weights()[g] * um;
                square += weight * scenario.weights()[g] * um * um;
            }
        }
        double sd = Math.sqrt(Math.max(0, square - mean * mean));
        FinishHistory history = new FinishHistory(
                grid.model, grid.profile, new Thickness(mean), new Thickness(sd), scenarios, histories);
        return new JointHistory(grid, evidence, tables, sums, history);
    }

    private Map<Scenario, Double> scenarios(List<ScenarioSums> sums) {
        double most = sums.stream().mapToDouble(ScenarioSums::logEvidence).max().orElse(0);
        Map<Scenario, Double> weights = new EnumMap<>(Scenario.class);
        double whole = 0;
        for (ScenarioSums s : sums) {
            double weight = grid.model.middle().of(s.cells().scenario) * Math.exp(s.logEvidence() - most);
            weights.put(s.cells().scenario, weight);
            whole += weight;
        }
        double sum = whole;
        weights.replaceAll((scenario, weight) -> weight / sum);
        return weights;
    }
}
