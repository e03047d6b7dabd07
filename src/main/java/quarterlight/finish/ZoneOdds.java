package quarterlight.finish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import quarterlight.finish.FinishReason.Source;

/** Puts together what the four scenarios say of one zone. */
final class ZoneOdds {
    private static final double LIMIT = 9;

    private final FinishModel model;
    private final List<ScenarioSums> scenarios;
    private final int zone;
    private final PanelTable table;
    private final double logReference;

    ZoneOdds(FinishModel model, List<ScenarioSums> scenarios, int zone, PanelTable table) {
        this.model = model;
        this.scenarios = scenarios;
        this.zone = zone;
        this.table = table;
        this.logReference = scenarios.stream()
                .mapToDouble(s -> s.zones().get(zone).logScale())
                .max()
                .orElse(0);
    }

    ZoneHistory history(ZoneEvidence evidence) {
        double[] all = table.factors.all();
        double[] whole = withValues(model.middle(), all);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (ScenarioPriors priors : List.of(model.middle(), model.low(), model.high())) {
            double notFactory = 1 - normalized(withValues(priors, all))[0];
            low = Math.min(low, notFactory);
            high = Math.max(high, notFactory);
        }
        double[] others = fromOthers(new double[] {1, 1, 1, 1});
        boolean silent = evidence.usable().isEmpty();
        return new ZoneHistory(
                evidence.zone(),
                evidence.readable(),
                Chances.ofArray(normalized(whole)),
                clampShare(low),
                clampShare(high),
                silent ? 0 : held(refinish(whole) - refinish(others)),
                silent ? 0 : held(repair(whole) - repair(others)),
                reasons(whole));
    }

    private List<FinishReason> reasons(double[] whole) {
        ZoneFactors factors = table.factors;
        List<FinishReason> reasons = new ArrayList<>();
        if (table.hasValues) {
            reasons.add(reason(Source.VALUES, whole, fromOthers(factors.groupsOnly())));
        }
        for (ZoneFactors.Group group : factors.groups()) {
            double[] without = withValues(model.middle(), factors.without(group));
            reasons.add(new FinishReason(
                    group.source(),
                    group.sign(),
                    group.seen(),
                    held(refinish(whole) - refinish(without)),
                    held(repair(whole) - repair(without))));
        }
        reasons.add(reason(Source.REST_OF_CAR, whole, alone()));
        reasons.sort(Comparator.comparingDouble(r -> -Math.abs(r.log10Refinish())));
        return reasons;
    }

    private static FinishReason reason(Source source, double[] whole, double[] without) {
        return new FinishReason(
                source,
                Optional.empty(),
                true,
                held(refinish(whole) - refinish(without)),
                held(repair(whole) - repair(without)));
    }

    /** Weights of the histories given everything, with these factors beside the values. */
    private double[] withValues(ScenarioPriors priors, double[] factor) {
        double[] sums = new double[4];
        for (ScenarioSums scenario : scenarios) {
            ScenarioSums.OfZone found = scenario.zones().get(zone);
            double weight = weight(priors, scenario, found);
            for (int h = 0; h < 4; h++) {
                sums[h] += weight * scenario.cells().panel[h] * found.values()[h] * factor[h];
            }
        }
        return sums;
    }

    /** Weights of the histories given all other zones, with these factors and without the zone's values. */
    private double[] fromOthers(double[] factor) {
        double[] sums = new double[4];
        for (ScenarioSums scenario : scenarios) {
            ScenarioSums.OfZone found = scenario.zones().get(zone);
            double weight = weight(model.middle(), scenario, found);
            for (int h = 0; h < 4; h++) {
                sums[h] += weight * scenario.cells().panel[h] * found.others() * factor[h];
            }
        }
        return sums;
    }

    /** Weights of the histories given this zone only. */
    private double[] alone() {
        double[] sums = new double[4];
        for (ScenarioSums scenario : scenarios) {
            double weight = model.middle().of(scenario.cells().scenario);
            double[] values = scenario.zones().get(zone).alone();
            for (int h = 0; h < 4; h++) {
                sums[h] += weight
                        * scenario.cells().panel[h]
                        * values[h]
                        * table.factors.all()[h];
            }
        }
        return sums;
    }

    private double weight(ScenarioPriors priors, ScenarioSums scenario, ScenarioSums.OfZone found) {
        return priors.of(scenario.cells().scenario) * Math.exp(found.logScale() - logReference);
    }

    private static double refinish(double[] w) {
        return log10(w[1] + w[2] + w[3]) - log10(w[0]);
    }

    private static double repair(double[] w) {
        return log10(w[3]) - log10(w[0] + w[1] + w[2]);
    }

    private static double log10(double weight) {
        return Math.log10(Math.max(weight, Double.MIN_NORMAL));
    }

    private static double held(double log10) {
        return Math.max(-LIMIT, Math.min(LIMIT, log10));
    }

    private static double clampShare(double share) {
        return Math.max(0, Math.min(1, share));
    }

    private static double[] normalized(double[] weights) {
        double sum = weights[0] + weights[1] + weights[2] + weights[3];
        double[] shares = new double[4];
        for (int h = 0; h < 4; h++) {
            shares[h] = weights[h] / sum;
        }
        return shares;
    }
}
