package quarterlight.walk;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
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
    private static final int LONGEST_STEP = 4;
    private static final int UNREACHED = 8;

    private static final double NEGLIGIBLE = 1e-13;

    private final double[][] chance;
    /** The same by columns. */
    private final double[][] turned;

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
            double[] kind = kind(zones.get(i), kin, nextDoor, index);
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
        chance = withPassedOver(step, moves.passedOver());
        turned = turned(chance);
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

    /** Shares of the zones of the same kind, nearer ones first; empty if there are none. */
    private static double[] kind(
            ZoneId from, ZoneKin kin, Map<ZoneId, Set<ZoneId>> nextDoor, Map<ZoneId, Integer> index) {
        Map<ZoneId, Integer> steps = steps(from, nextDoor);
        double[] row = new double[index.size()];
        double sum = 0;
        for (Map.Entry<ZoneId, Double> other :
                kin.kinds().getOrDefault(from, Map.of()).entrySet()) {
            if (index.containsKey(other.getKey())) {
                double far = steps.getOrDefault(other.getKey(), UNREACHED);
                row[index.get(other.getKey())] = other.getValue() / (1 + far);
                sum += row[index.get(other.getKey())];
            }
        }
        double all = sum;
        return sum == 0
                ? new double[0]
                : Arrays.stream(row).map(share -> share / all).toArray();
    }

    /** In how many steps next door each zone is reached. */
    private static Map<ZoneId, Integer> steps(ZoneId from, Map<ZoneId, Set<ZoneId>> nextDoor) {
        Map<ZoneId, Integer> steps = new HashMap<>(Map.of(from, 0));
        Deque<ZoneId> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            ZoneId here = open.remove();
            for (ZoneId next : nextDoor.getOrDefault(here, Set.of())) {
                if (steps.putIfAbsent(next, steps.get(here) + 1) == null) {
                    open.add(next);
                }
            }
        }
        return steps;
    }

    /** One step and, for zones passed over without a photo, two, three and four: each the share less likely than the one before. */
    private static double[][] withPassedOver(double[][] step, double share) {
        int n = step.length;
        double[][] steps = step;
        double[][] out = new double[n][n];
        double weight = 1 - share;
        for (int length = 1; length <= LONGEST_STEP; length++) {
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    out[i][j] += weight * steps[i][j];
                }
            }
            weight *= length + 1 == LONGEST_STEP ? share / (1 - share) : share;
            steps = length < LONGEST_STEP ? product(steps, step) : steps;
        }
        return out;
    }

    private static double[][] product(double[][] a, double[][] b) {
        int n = a.length;
        double[][] out = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                double x = a[i][k];
                for (int j = 0; j < n; j++) {
                    out[i][j] += x * b[k][j];
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
        times(v, chance, out);
    }

    /** One move from the right: {@code out = J v}. */
    void backward(double[] v, double[] out) {
        times(v, turned, out);
    }

    /** Row by row, which the machine does several figures at once; four rows a pass, so that each sum is fetched and put back a fourth as often. */
    private static void times(double[] v, double[][] rows, double[] out) {
        Arrays.fill(out, 0);
        int[] held = new int[v.length];
        int n = 0;
        for (int i = 0; i < v.length; i++) {
            if (v[i] > NEGLIGIBLE) {
                held[n++] = i;
            }
        }
        int at = 0;
        for (; at + 3 < n; at += 4) {
            double x0 = v[held[at]];
            double x1 = v[held[at + 1]];
            double x2 = v[held[at + 2]];
            double x3 = v[held[at + 3]];
            double[] row0 = rows[held[at]];
            double[] row1 = rows[held[at + 1]];
            double[] row2 = rows[held[at + 2]];
            double[] row3 = rows[held[at + 3]];
            for (int j = 0; j < out.length; j++) {
                out[j] = out[j] + x0 * row0[j] + x1 * row1[j] + x2 * row2[j] + x3 * row3[j];
            }
        }
        for (; at < n; at++) {
            double x = v[held[at]];
            double[] row = rows[held[at]];
            for (int j = 0; j < out.length; j++) {
                out[j] += x * row[j];
            }
        }
    }

    private static double[][] turned(double[][] rows) {
        double[][] turned = new double[rows.length][rows.length];
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < rows.length; j++) {
                turned[j][i] = rows[i][j];
            }
        }
        return turned;
    }
}
