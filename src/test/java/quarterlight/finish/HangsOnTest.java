package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.finish.model.HeldNumbers;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.units.Thickness;
import quarterlight.visit.trial.SignKind;

/** Which assumption a finding hangs on: against plain Monte Carlo in which that number is held, and against every other number. */
class HangsOnTest {
    private static final List<String> DOORS = List.of("door-front-left", "door-front-right", "door-rear-left");
    private static final int STATES = 4000;

    private static JointHistory joint(List<MonteCarlo.Door> doors) {
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
        return new FinishEngine(FinishProfile.LACQUER)
                .joint(new FinishEvidence(FinishProfile.LACQUER, new Thickness(2000), zones));
    }

    /** Cars on whose first panel judged numbers move the finding by much: spread, signs, coat, level. */
    @ParameterizedTest
    @ValueSource(ints = {5, 8, 11, 14, 17})
    void bothEndsAreThoseOfMonteCarloWithTheNumberHeld(int number) {
        List<MonteCarlo.Door> doors = MonteCarloCases.cases().get(number);
        HeldNumbers.Sway said = joint(doors).hangsOn().get(new ZoneId(DOORS.get(0)));
        int states = number == 11 ? 3 * STATES : STATES;
        double low = new MonteCarlo(number).first(doors, states, Map.of(said.number(), -HeldNumbers.END))[0];
        double high = new MonteCarlo(number).first(doors, states, Map.of(said.number(), HeldNumbers.END))[0];
        assertThat(said.low()).as("%s low", said.number()).isCloseTo(low, within(.08));
        assertThat(said.high()).as("%s high", said.number()).isCloseTo(high, within(.08));
        assertThat(said.reach()).as("it moves the panel at all").isGreaterThan(.02);
    }

    /** The number named is the one, or nearly, that moves the panel most when all draws are worked out with each number held. */
    @Test
    void noOtherNumberMovesItMuchMore() {
        List<MonteCarlo.Door> doors = List.of(
                new MonteCarlo.Door(List.of(6.6, 6.9, 6.7), Map.of(SignKind.TEXTURE_DIFFERS, true)),
                new MonteCarlo.Door(List.of(5.0, 5.2), Map.of(SignKind.TEXTURE_DIFFERS, false)));
        JointHistory joint = joint(doors);
        HeldNumbers.Sway said = joint.hangsOn().get(new ZoneId(DOORS.get(0)));
        double most = Stream.of(JudgedNumber.values())
                .map(number -> reach(joint.evidence(), number))
                .max(Comparator.naturalOrder())
                .orElseThrow();
        assertThat(reach(joint.evidence(), said.number())).isGreaterThan(most - .03);
        assertThat(most).isGreaterThan(.1);
    }

    private static double reach(FinishEvidence evidence, JudgedNumber number) {
        double[] ends = {-HeldNumbers.END, HeldNumbers.END};
        for (int end = 0; end < 2; end++) {
            ends[end] = new FinishEngine(
                            FinishProfile.LACQUER, quarterlight.finish.model.Draws.USUAL.holding(number, ends[end]))
                    .history(evidence)
                    .zones()
                    .get(0)
                    .notFactory();
        }
        return Math.abs(ends[1] - ends[0]);
    }

    @Test
    void aFindingTurnsWhereItsEndsLieOnEitherSideOfEven() {
        assertThat(new HeldNumbers.Sway(JudgedNumber.COAT, .49, .5).turns()).isTrue();
        assertThat(new HeldNumbers.Sway(JudgedNumber.COAT, .5, .49).turns()).isTrue();
        assertThat(new HeldNumbers.Sway(JudgedNumber.COAT, .5, .9).turns()).isFalse();
        assertThat(new HeldNumbers.Sway(JudgedNumber.COAT, .1, .499).turns()).isFalse();
    }
}
