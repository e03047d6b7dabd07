package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.units.Thickness;

/** The sums of the program against plain Monte Carlo over the stated model, for 20 cases. */
class FinishModelMonteCarloTest {
    private static final List<String> DOORS = List.of("door-front-left", "door-front-right", "door-rear-left");
    private static final int STATES = 1500;
    /** Both sides draw the judged numbers: 192 here, 1,500 there. */
    private static final double AGREE = .06;

    /** Few of the drawn states fit these cases, so they take more of them. */
    private static final Set<Integer> RARE = Set.of(6, 15);

    static IntStream numbers() {
        return IntStream.range(0, 20);
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void agreesWithPlainMonteCarlo(int number) {
        agrees(MonteCarloCases.cases().get(number), number, RARE.contains(number) ? 6 * STATES : STATES);
    }

    /** Few states reach as high as this panel, so it takes more of them. */
    @Test
    void agreesOnAPanelOfFortyMil() {
        agrees(List.of(new MonteCarlo.Door(List.of(40.0, 41.0), Map.of())), 21, 6 * STATES);
    }

    private static void agrees(List<MonteCarlo.Door> doors, long seed, int states) {
        List<ZoneEvidence> zones = new ArrayList<>();
        for (int p = 0; p < doors.size(); p++) {
            zones.add(new ZoneEvidence(
                    new ZoneId(DOORS.get(p)),
                    true,
                    doors.get(p).mil().stream().map(mil -> mil * 25.4).toList(),
                    0,
                    0,
                    doors.get(p).signs(),
                    Optional.empty()));
        }
        FinishEvidence evidence = new FinishEvidence(FinishProfile.LACQUER, new Thickness(2000), zones);
        ZoneHistory said = FinishHistory.of(evidence).zones().get(0);
        double[] drawn = new MonteCarlo(seed).first(doors, states);
        assertThat(said.notFactory()).as("refinish").isCloseTo(drawn[0], within(AGREE));
        assertThat(said.chances().filler()).as("filler").isCloseTo(drawn[1], within(AGREE));
    }
}
