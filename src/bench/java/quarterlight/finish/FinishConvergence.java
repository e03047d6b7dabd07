package quarterlight.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.units.Thickness;

/**
 * How the likelihoods settle as the grid grows finer: the greatest distance of any probability from the finest grid, over the
 * independent cases and a car of 25 panels with 12 spots each. Run by hand; results stand in docs/finish-history-study.md.
 */
public final class FinishConvergence {
    private static final GridSize FINEST = new GridSize(160, 2, 6, 3, 5);
    private static final List<GridSize> SIZES = List.of(
            new GridSize(16, 6, 6, 6, 4.5),
            new GridSize(24, 4, 6, 4, 4.5),
            new GridSize(32, 3, 6, 3, 4.5),
            new GridSize(48, 3, 6, 3, 4.5),
            GridSize.USUAL,
            new GridSize(96, 2, 5, 3, 5));

    private FinishConvergence() {}

    public static void main(String[] arguments) {
        List<FinishEvidence> cases = new ArrayList<>(
                FinishCase.all().stream().map(FinishCase::evidence).toList());
        cases.add(measured(25, 12));
        List<FinishHistory> finest =
                cases.stream().map(evidence -> history(evidence, FINEST)).toList();
        for (GridSize size : SIZES) {
            double chance = 0;
            double weight = 0;
            for (int c = 0; c < cases.size(); c++) {
                FinishHistory found = history(cases.get(c), size);
                for (int q = 0; q < found.zones().size(); q++) {
                    ZoneHistory zone = found.zones().get(q);
                    ZoneHistory known = finest.get(c).zones().get(q);
                    for (History history : History.values()) {
                        double off = Math.abs(
                                zone.chances().of(history) - known.chances().of(history));
                        chance = Math.max(chance, off);
                    }
                    weight = Math.max(weight, Math.abs(zone.log10LrOwn() - known.log10LrOwn()));
                }
            }
            print(String.format(
                    Locale.ROOT,
                    "| %d | %d, %d, %d | %.1f | %.1e | %.1e |",
                    size.perUnit(),
                    size.levelSteps(),
                    size.coatSteps(),
                    size.bareCoatSteps(),
                    size.tails(),
                    chance,
                    weight));
        }
    }

    private static FinishHistory history(FinishEvidence evidence, GridSize size) {
        return new FinishEngine(FinishModel.V1, evidence.profile(), size).history(evidence);
    }

    /** A lacquer car on which three panels are refinished. */
    private static FinishEvidence measured(int panels, int spots) {
        Random random = new Random(5);
        List<ZoneEvidence> zones = new ArrayList<>();
        for (int q = 0; q < panels; q++) {
            double level = 25.4 * (q % 9 == 4 ? 9.5 : 5) * Math.exp(0.15 * random.nextGaussian());
            List<Double> um = new ArrayList<>();
            for (int n = 0; n < spots; n++) {
                um.add(level * Math.exp(0.12 * random.nextGaussian()));
            }
            zones.add(new ZoneEvidence(new ZoneId("panel-" + q), true, um, 0, 0, Map.of(), Optional.empty()));
        }
        return new FinishEvidence(FinishProfile.LACQUER, new Thickness(2000), zones);
    }

    private static void print(String line) {
        System.out.println(line);
    }
}
