package quarterlight.walk;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
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
     * Where a step from each zone can go, the same for all ideas of where moves go. Immutable.
     *
     * @param popular how often each zone is photographed, as shares
     * @param near shares of the zones next door; a row is empty where there are none
     * @param mirror the same place on the other side, likewise
     * @param kind zones of the same kind, likewise
     */
    @SuppressWarnings("ArrayRecordComponent")
    record Ways(double[] popular, double[][] near, double[][] mirror, double[][] kind) {
        /**
         * @param zones the zones in their order
         * @param nextDoor zones next to each zone; zones not in {@code zones} are left out
         * @param kin which zones are of a kind
         */
        static Ways of(
                List<ZoneId> zones,
                Map<ZoneId, Set<ZoneId>> nextDoor,
                ZoneKin kin,
                WalkHabits habits,
                WalkModel model) {
            int n = zones.size();
            Map<ZoneId, Integer> index = new HashMap<>();
            for (int i = 0; i < n; i++) {
                index.put(zones.get(i), i);
            }
            double[] popular = zones.stream()
                    .mapToDouble(zone -> 1 + habits.stops().getOrDefault(zone, 0))
                    .toArray();
            double all = Arrays.stream(popular).sum();
            double[][] near = new double[n][];
            double[][] mirror = new double[n][];
            double[][] kind = new double[n][];
            for (int i = 0; i < n; i++) {
                popular[i] /= all;
                near[i] = JumpMatrix.near(i, zones, nextDoor, habits, index, model);
                mirror[i] = JumpMatrix.mirror(zones.get(i), kin, index);
                kind[i] = JumpMatrix.kind(zones.get(i), kin, nextDoor, index);
            }
            return new Ways(popular, near, mirror, kind);
        }

        /** The same where zones that have none like them on the other side are so much less likely. */
        Ways weighing(double single) {
            return single == 1
                    ? this
                    : new Ways(
                            weighed(popular, single),
                            Stream.of(near).map(row -> weighed(row, single)).toArray(double[][]::new),
                            mirror,
                            Stream.of(kind).map(row -> weighed(row, single)).toArray(double[][]::new));
        }

        private double[] weighed(double[] row, double single) {
            double[] shares = new double[row.length];
            for (int j = 0; j < row.length; j++) {
                shares[j] = mirror[j].length == 0 ? single * row[j] : row[j];
            }
            double all = Arrays.stream(shares).sum();
            return all == 0
                    ? new double[0]
                    : Arrays.stream(shares).map(share -> share / all).toArray();
        }
    }

    /** @param moves shares of the moves that do not go next door */
    JumpMatrix(Ways all, WalkModel.Moves moves) {
        Ways ways = all.weighing(moves.single());
        int n = ways.popular().length;
        double[] any = new double[n];
        double[][] known = new double[n][n];
        for (int i = 0; i < n; i++) {
            double toMirror = ways.mirror()[i].length == 0 ? 0 : moves.mirror();
            double toKind = ways.kind()[i].length == 0 ? 0 : moves.kind();
            double toNear = ways.near()[i].length == 0 ? 0 : 1 - moves.anyZone() - toMirror - toKind;
            any[i] = 1 - toMirror - toKind - toNear;
            add(toNear, ways.near()[i], known[i]);
            add(toMirror, ways.mirror()[i], known[i]);
            add(toKind, ways.kind()[i], known[i]);
        }
        chance = withPassedOver(new Step(ways.popular(), any, known), moves.passedOver());
        turned = turned(chance);
    }

    private static void add(double share, double[] row, double[] sum) {
        for (int j = 0; share > 0 && j < sum.length; j++) {
            sum[j] += share * row[j];
        }
    }

    /**
     * One step: to any zone as often as it is photographed, else to few known ones. Kept apart, as the few make products cheap.
     *
     * @param any share of the steps from each zone that go to any
     */
    @SuppressWarnings("ArrayRecordComponent")
    private record Step(double[] popular, double[] any, double[][] known) {
        /** This step, and then those. */
        double[][] then(double[][] later) {
            int n = popular.length;
            double[] fromAny = new double[n];
            for (int k = 0; k < n; k++) {
                add(popular[k], later[k], fromAny);
            }
            double[][] out = new double[n][n];
            for (int i = 0; i < n; i++) {
                add(any[i], fromAny, out[i]);
                for (int k = 0; k < n; k++) {
                    add(known[i][k], later[k], out[i]);
                }
            }
            return out;
        }

        double[][] rows() {
            int n = popular.length;
            double[][] rows = new double[n][n];
            for (int i = 0; i < n; i++) {
                add(any[i], popular, rows[i]);
                add(1, known[i], rows[i]);
            }
            return rows;
        }
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
    private static double[][] withPassedOver(Step step, double share) {
        double[][] steps = step.rows();
        int n = steps.length;
        double[][] out = new double[n][n];
        double weight = 1 - share;
        for (int length = 1; length <= LONGEST_STEP; length++) {
            for (int i = 0; i < n; i++) {
                add(weight, steps[i], out[i]);
            }
            weight *= length + 1 == LONGEST_STEP ? share / (1 - share) : share;
            steps = length < LONGEST_STEP ? step.then(steps) : steps;
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
