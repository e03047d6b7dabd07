package quarterlight.walk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterlight.car.ZoneId;

/**
 * Where a walker goes from each zone, once on the move: to zones next door (equally at first, then as the habits say), and now
 * and then to any zone. Sparse rows plus one uniform share.
 */
final class JumpMatrix {
    private final int[][] to;
    private final double[][] weight;
    private final double anyZone;

    /**
     * @param zones the zones in their order
     * @param nextDoor zones next to each zone; zones not in {@code zones} are left out
     */
    JumpMatrix(List<ZoneId> zones, Map<ZoneId, Set<ZoneId>> nextDoor, WalkHabits habits, WalkModel model) {
        Map<ZoneId, Integer> index = new HashMap<>();
        for (int i = 0; i < zones.size(); i++) {
            index.put(zones.get(i), i);
        }
        to = new int[zones.size()][];
        weight = new double[zones.size()][];
        anyZone = model.anyZone();
        for (int i = 0; i < zones.size(); i++) {
            Map<Integer, Double> row = new HashMap<>();
            for (ZoneId next : nextDoor.getOrDefault(zones.get(i), Set.of())) {
                if (index.containsKey(next)) {
                    row.merge(index.get(next), 1.0, Double::sum);
                }
            }
            habits.moves().getOrDefault(zones.get(i), Map.of()).forEach((next, count) -> {
                if (index.containsKey(next)) {
                    row.merge(index.get(next), model.habitWeight() * count, Double::sum);
                }
            });
            fill(i, row);
        }
    }

    private void fill(int i, Map<Integer, Double> row) {
        double sum = row.values().stream().mapToDouble(Double::doubleValue).sum();
        int[] targets =
                row.keySet().stream().mapToInt(Integer::intValue).sorted().toArray();
        double[] shares = new double[targets.length];
        for (int k = 0; k < targets.length; k++) {
            shares[k] = row.get(targets[k]) / sum;
        }
        to[i] = targets;
        weight[i] = shares;
    }

    int size() {
        return to.length;
    }

    /** One jump applied from the left: {@code out = v J}. */
    double[] forward(double[] v) {
        int n = v.length;
        double[] out = new double[n];
        double spread = 0;
        for (int i = 0; i < n; i++) {
            double near = v[i] * (to[i].length == 0 ? 0 : 1 - anyZone);
            spread += v[i] - near;
            for (int k = 0; k < to[i].length; k++) {
                out[to[i][k]] += near * weight[i][k];
            }
        }
        for (int i = 0; i < n; i++) {
            out[i] += spread / n;
        }
        return out;
    }

    /** One jump applied from the right: {@code out = J v}. */
    double[] backward(double[] v) {
        int n = v.length;
        double mean = 0;
        for (double x : v) {
            mean += x / n;
        }
        double[] out = new double[n];
        for (int i = 0; i < n; i++) {
            double near = 0;
            for (int k = 0; k < to[i].length; k++) {
                near += weight[i][k] * v[to[i][k]];
            }
            double share = to[i].length == 0 ? 0 : 1 - anyZone;
            out[i] = share * near + (1 - share) * mean;
        }
        return out;
    }
}
