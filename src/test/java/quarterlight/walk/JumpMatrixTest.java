package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.walk.pace.GapCounts;

/** Where a move goes, by hand from the shares that docs/methods/zone-suggestion.md tells of. */
class JumpMatrixTest {
    private static final ZoneId A = new ZoneId("a");
    private static final ZoneId B = new ZoneId("b");
    private static final ZoneId C = new ZoneId("c");
    private static final ZoneId D = new ZoneId("d");
    private static final ZoneId E = new ZoneId("e");
    private static final List<ZoneId> ZONES = List.of(A, B, C, D, E);
    /** A row a-b-c-d; e stands apart. */
    private static final Map<ZoneId, Set<ZoneId>> NEXT_DOOR =
            Map.of(A, Set.of(B), B, Set.of(A, C), C, Set.of(B, D), D, Set.of(C));

    private static final Offset<Double> EXACT = within(1e-12);

    private static double[] from(int zone, JumpMatrix jumps) {
        double[] at = new double[ZONES.size()];
        at[zone] = 1;
        double[] to = new double[ZONES.size()];
        jumps.forward(at, to);
        return to;
    }

    private static JumpMatrix jumps(ZoneKin kin, WalkHabits habits, WalkModel.Moves moves) {
        return new JumpMatrix(JumpMatrix.Ways.of(ZONES, NEXT_DOOR, kin, habits, WalkModel.V5), moves);
    }

    @Test
    void zonesOfAKindAreTheLikelierTheNearerOneOverStepsAndOne() {
        ZoneKin kin = new ZoneKin(Map.of(A, D), Map.of(A, Map.of(B, 1.0, C, 4.0, E, 9.0)));
        double[] to = from(0, jumps(kin, WalkHabits.NONE, new WalkModel.Moves(1, 0.1, 0.2, 0.3, 0, 1)));
        // b is one step away, c two, e is never reached and counts as eight
        double b = 1.0 / 2;
        double c = 4.0 / 3;
        double e = 9.0 / 9;
        double all = b + c + e;
        double any = 0.1 / 5;
        assertThat(to)
                .containsExactly(
                        new double[] {
                            any, any + 0.4 + 0.3 * b / all, any + 0.3 * c / all, any + 0.2, any + 0.3 * e / all
                        },
                        EXACT);
    }

    /** Of b, c and e, all of a kind with a and as far as stated, b and c have each other on the other side; e has none and counts a fifth. */
    @Test
    void whoGoesByPairsSeldomStopsAtAZoneOfWhichThereIsOne() {
        ZoneKin kin = new ZoneKin(Map.of(A, D, D, A, B, C, C, B), Map.of(A, Map.of(B, 1.0, C, 4.0, E, 9.0)));
        double[] to = from(0, jumps(kin, WalkHabits.NONE, new WalkModel.Moves(1, 0.1, 0.2, 0.3, 0, 0.2)));
        double b = 1.0 / 2;
        double c = 4.0 / 3;
        double e = 0.2 * 9.0 / 9;
        double all = b + c + e;
        double any = 0.1 / 4.2;
        assertThat(to)
                .containsExactly(
                        new double[] {
                            any, any + 0.4 + 0.3 * b / all, any + 0.3 * c / all, any + 0.2, 0.2 * any + 0.3 * e / all
                        },
                        EXACT);
    }

    @Test
    void whatAZoneHasNotGoesNextDoorAndWithoutADoorAnywhere() {
        double[] plain = from(1, jumps(ZoneKin.NONE, WalkHabits.NONE, new WalkModel.Moves(1, 0.1, 0.2, 0.3, 0, 1)));
        assertThat(plain).containsExactly(new double[] {0.47, 0.02, 0.47, 0.02, 0.02}, EXACT);
        double[] apart = from(4, jumps(ZoneKin.NONE, WalkHabits.NONE, new WalkModel.Moves(1, 0.1, 0.2, 0.3, 0, 1)));
        assertThat(apart).containsExactly(new double[] {0.2, 0.2, 0.2, 0.2, 0.2}, EXACT);
    }

    /** Zones next door are worth 0.8 of a move together; how often a zone was photographed says where a move to any goes. */
    @Test
    void movesOfEarlierVisitsAreAddedToTheZonesNextDoor() {
        WalkHabits habits = new WalkHabits(Map.of(A, Map.of(C, 3)), Map.of(D, 5), GapCounts.NONE);
        double[] to = from(0, jumps(ZoneKin.NONE, habits, new WalkModel.Moves(1, 0.1, 0, 0, 0, 1)));
        assertThat(to)
                .containsExactly(new double[] {0.01, 0.01 + 0.9 * 0.8 / 3.8, 0.01 + 0.9 * 3 / 3.8, 0.06, 0.01}, EXACT);
    }

    @Test
    void doorsAndHabitsToZonesThatTheCarLacksAreLeftOut() {
        JumpMatrix jumps = new JumpMatrix(
                JumpMatrix.Ways.of(
                        List.of(A, B),
                        Map.of(A, Set.of(B, C)),
                        new ZoneKin(Map.of(A, C), Map.of(A, Map.of(C, 4.0))),
                        new WalkHabits(Map.of(A, Map.of(C, 3)), Map.of(), GapCounts.NONE),
                        WalkModel.V5),
                new WalkModel.Moves(1, 0.1, 0.2, 0.3, 0, 1));
        double[] to = new double[2];
        jumps.forward(new double[] {1, 0}, to);
        assertThat(to).containsExactly(new double[] {0.05, 0.95}, EXACT);
        assertThat(jumps.size()).isEqualTo(2);
    }

    @Test
    void aMoveFromTheRightIsTheSameSumFromTheOtherSide() {
        JumpMatrix jumps = jumps(ZoneKin.NONE, WalkHabits.NONE, new WalkModel.Moves(1, 0.1, 0, 0, 0.3, 1));
        Random random = new Random(5);
        double[] left = random.doubles(5).toArray();
        double[] right = random.doubles(5).toArray();
        double[] moved = new double[5];
        jumps.forward(left, moved);
        double[] ahead = new double[5];
        jumps.backward(right, ahead);
        double one = 0;
        double other = 0;
        double byRows = 0;
        for (int i = 0; i < 5; i++) {
            one += moved[i] * right[i];
            other += left[i] * ahead[i];
            double[] row = from(i, jumps);
            for (int j = 0; j < 5; j++) {
                byRows += left[i] * row[j] * right[j];
            }
        }
        assertThat(one).isCloseTo(other, EXACT).isCloseTo(byRows, EXACT);
    }
}
