package quarterlight.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quarterlight.visit.trial.SignKind;

/** The cars that the program and {@link MonteCarlo} both judge. */
final class MonteCarloCases {
    private MonteCarloCases() {}

    /** Twenty cars of one to three doors. */
    static List<List<MonteCarlo.Door>> cases() {
        double[][][] mil = {
            {{5, 5.2, 4.9}},
            {{9.2, 9, 9.4}},
            {{3, 3.2}},
            {{25, 28, 22}},
            {{5, 5.1, 5, 30}},
            {{6, 6, 6}},
            {{18, 26, 31}},
            {{12, 12.5, 11.8}},
            {{5, 7.5, 5.1, 7.8}},
            {{8}},
            {{5, 5.2}, {5.1, 4.9}},
            {{9, 9.3}, {5, 5.1}},
            {{5, 5.2}, {9, 9.1}},
            {{20, 19}, {5, 5.2}},
            {{6, 6.1}, {6, 5.9}, {6.2, 6.1}},
            {{9, 8.8}, {9.1, 9}, {9, 9.3}},
            {{5.2, 5}, {4.9, 5}, {5.1, 5}},
            {{3.5, 3.6}, {8, 8.1}, {7.9, 8}},
            {{15, 16}, {15.5, 15}},
            {{2.5, 2.4}, {2.6, 2.5}}
        };
        List<List<MonteCarlo.Door>> cases = new ArrayList<>();
        for (int n = 0; n < mil.length; n++) {
            List<MonteCarlo.Door> doors = new ArrayList<>();
            for (int p = 0; p < mil[n].length; p++) {
                List<Double> spots = new ArrayList<>();
                for (double value : mil[n][p]) {
                    spots.add(value);
                }
                doors.add(new MonteCarlo.Door(spots, p > 0 ? Map.of() : signsOf(n)));
            }
            cases.add(doors);
        }
        return cases;
    }

    private static Map<SignKind, Boolean> signsOf(int n) {
        if (n > 9) {
            return n % 3 == 0 ? Map.of(SignKind.OVERSPRAY, false, SignKind.RIPPLE, false) : Map.of();
        }
        return switch (n % 5) {
            case 1 -> Map.of(SignKind.OVERSPRAY, false, SignKind.TEXTURE_DIFFERS, true);
            case 2 -> Map.of(SignKind.OVERSPRAY, false, SignKind.RIPPLE, false, SignKind.WEAK_MAGNET, false);
            case 3 -> Map.of(SignKind.FACTORY_STENCIL, false, SignKind.COLOR_DIFFERS, false);
            case 4 -> Map.of(SignKind.FACTORY_PRIMER_VISIBLE, true, SignKind.RUNS_OR_DIRT, false);
            default -> Map.of();
        };
    }
}
