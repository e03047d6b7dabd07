package quarterlight.walk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterlight.car.ZoneId;

/**
 * Where a walker stands after a move from each zone: in a zone next door (equally at first, then as the habits say), now and then in any
 * zone (more likely in one often photographed), seldom two such steps away. Dense rows; immutable.
 */
final class JumpMatrix {
    private final double[][] chance;

    /**
     * @param zones the zones in their order
     * @param nextDoor zones next to each zone; zones not in {@code zones} are left out
     * @param kin which zones are of a kind
     * @param moves shares of the moves that do not go next door
     */
    JumpMatrix(
            List<ZoneId> zones,
            Map<ZoneId, Set<ZoneId>> nextDoor,
            ZoneKin kin,
            WalkHabits habits,
            WalkModel.Moves moves,
            WalkModel model) {
        int n = zones.size();
        Map<ZoneId, Integer> index = new HashMap<>();
        for (int i = 0; i < n; i++) {
            index.put(zones.get(i), i);
        }
        double[] popular = new double[n];
        double all = 0;
        for (int i = 0; i < n; i++) {
            popular[i] = 1 + habits.stops().getOrDefault(zones.get(i), 0);
            all += popular[i];
        }
        double[][] step = new double[n][n];
        for (int i = 0; i < n; i++) {
            double[] near = near(i, zones, nextDoor, habits, index, model);
            double[] mirror = mirror(zones.get(i), kin, index);
            double[] kind = kind(zones.get(i), kin, index);
            double toMirror = mirror.length == 0 ? 0 : moves.mirror();
            double toKind = kind.length == 0 ? 0 : moves.kind();
            double toNear = near.length == 0 ? 0 : 1 - moves.anyZone() - toMirror - toKind;
            double toAny = 1 - toMirror - toKind - toNear;
            for (int j = 0; j < n; j++) {
                step[i][j] = toAny * popular[j] / all
                        + (toNear > 0 ? toNear * near[j] : 0)
                        + (toMirror > 0 ? toMirror * mirror[j] : 0)
                        + (toKind > 0 ? toKind * kind[j] : 0);
            }
        }
        chance = withPassedOver(step, model.passedOver());
    }

    /** Shares of the zones next door and of those the habits know; empty if there are none. */
    private static double[] near(
            int from,
            List<ZoneId> zones,
            Map<ZoneId, Set<ZoneId>> nextDoor,
            WalkHabits habits,
            Map<ZoneId, Integer> index,
            WalkModel model) {
        double[] row = new double[zones.size()];
        List<ZoneId> doors = nextDoor.getOrDefault(zones.get(from), Set.of()).stream()
                .filter(index::containsKey)
                .toList();
        double sum = 0;
        for (ZoneId door : doors) {
            row[index.get(door)] += model.priorMoves() / doors.size();
            sum += model.priorMoves() / doors.size();
        }
        for (Map.Entry<ZoneId, Integer> move :
                habits.moves().getOrDefault(zones.get(from), Map.of()).entrySet()) {
            if (index.containsKey(move.getKey())) {
                row[index.get(move.getKey())] += move.getValue();
                sum += move.getValue();
            }
        }
        for (int j = 0; j < row.length; j++) {
            row[j] /= Math.max(sum, Double.MIN_NORMAL);
        }
        return sum == 0 ? new double[0] : row;
    }

    /** All of it on the same place on the other side; empty if there is none. */
    private static double[] mirror(ZoneId from, ZoneKin kin, Map<ZoneId, Integer> index) {
        Integer at = kin.mirrors().containsKey(from) ? index.get(kin.mirrors().get(from)) : null;
        if (at == null) {
            return new double[0];
        }
        double[] row = new double[index.size()];
        row[at] = 1;
        return row;
    }

    /** Shares of the zones of the same kind; empty if there are none. */
    private static double[] kind(ZoneId from, ZoneKin kin, Map<ZoneId, Integer> index) {
        double[] row = new double[index.size()];
        double sum = 0;
        for (Map.Entry<ZoneId, Double> other :
                kin.kinds().getOrDefault(from, Map.of()).entrySet()) {
            if (index.containsKey(other.getKey())) {
                row[index.get(other.getKey())] = other.getValue();
                sum += other.getValue();
            }
        }
        double all = sum;
        return sum == 0
                ? new double[0]
                : java.util.Arrays.stream(row).map(share -> share / all).toArray();
    }

    private static double[][] withPassedOver(double[][] step, double share) {
        int n = step.length;
        double[][] out = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                double x = share * step[i][k];
                out[i][k] += (1 - share) * step[i][k];
                for (int j = 0; j < n; j++) {
                    out[i][j] += x * step[k][j];
                }
            }
        }
        return out;
    }

    int size() {
        return chance.length;
    }

    /** One move from the left: {@code out = v J}. */
    void forward(double[] v, double[] out) {
        java.util.Arrays.fill(out, 0);
        for (int i = 0; i < v.length; i++) {
            double x = v[i];
            if (x > 1e-13) {
                double[] row = chance[i];
                for (int j = 0; j < out.length; j++) {
                    out[j] += x * row[j];
                }
            }
        }
    }

    /** One move from the right: {@code out = J v}. */
    void backward(double[] v, double[] out) {
        for (int i = 0; i < out.length; i++) {
            double[] row = chance[i];
            double sum = 0;
            for (int j = 0; j < row.length; j++) {
                sum += row[j] * v[j];
            }
            out[i] = sum;
        }
    }
}
