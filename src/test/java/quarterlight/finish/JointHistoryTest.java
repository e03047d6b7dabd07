package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.units.Thickness;

/** Counts of zones against Monte Carlo straight from the model's description, and against brute force. */
class JointHistoryTest {
    private static final long SEED = 20260;
    private static final int DRAWS = 2_000_000;

    @Test
    void countsAgreeWithCarsDrawnFromTheModelAndWeighedByTheirValues() {
        double[] um = {130, 205, 260};
        JointHistory joint = joint(um);
        FinishModel model = FinishModel.V1;
        CarDraw draw = new CarDraw(model, new Random(SEED));
        double[] refinished = new double[4];
        double[] filler = new double[4];
        double whole = 0;
        double squares = 0;
        for (int n = 0; n < DRAWS; n++) {
            draw.car(FinishProfile.LACQUER, 3);
            double weight = 1;
            int counted = 0;
            int filled = 0;
            for (int q = 0; q < 3; q++) {
                int h = draw.histories[q];
                weight *= draw.density(q, Math.log(um[q] / 25.4))
                        * (1 - model.noMetal().toArray()[h]);
                counted += h > 0 ? 1 : 0;
                filled += h == 3 ? 1 : 0;
            }
            refinished[counted] += weight;
            filler[filled] += weight;
            whole += weight;
            squares += weight * weight;
        }
        // as many equally weighed cars would scatter so; four times that is passed by chance once in 10,000
        double error = 0.5 / Math.sqrt(whole * whole / squares);
        assertThat(error).as("too few draws to tell").isLessThan(0.004);
        for (int k = 0; k < 4; k++) {
            assertThat(joint.notFactory(joint.zones()).chances().get(k))
                    .as("seed %d, %d not factory", SEED, k)
                    .isCloseTo(refinished[k] / whole, within(4 * error));
            assertThat(joint.filler(joint.zones()).chances().get(k))
                    .as("seed %d, %d filler", SEED, k)
                    .isCloseTo(filler[k] / whole, within(4 * error));
        }
    }

    @Test
    void theMeanCountIsTheSumOfTheZonesLikelihoods() {
        JointHistory joint = joint(60, 65, 180, 400);
        double sum = joint.history().zones().stream()
                .mapToDouble(ZoneHistory::notFactory)
                .sum();
        assertThat(joint.notFactory(joint.zones()).mean()).isCloseTo(sum, within(1e-6));
        double third = joint.history().zones().get(2).notFactory();
        CountDistribution one =
                joint.notFactory(Set.of(joint.history().zones().get(2).zone()));
        assertThat(one.chances()).hasSize(2);
        assertThat(one.mean()).isCloseTo(third, within(1e-6));
    }

    @Test
    void zonesOfOneCarAreNotIndependent() {
        JointHistory joint = joint(215, 220, 210, 216, 222);
        CountDistribution count = joint.notFactory(joint.zones());
        double[] shares = joint.history().zones().stream()
                .mapToDouble(ZoneHistory::notFactory)
                .toArray();
        double independent = JointHistory.ofIndependent(shares)[0];
        assertThat(count.chances().get(0)).isGreaterThan(10 * independent);
    }

    @Test
    void independentCountsAgreeWithBruteForce() {
        double[] shares = {0.1, 0.55, 0.7, 0.02};
        double[] counts = new double[5];
        for (int bits = 0; bits < 16; bits++) {
            double chance = 1;
            for (int q = 0; q < 4; q++) {
                chance *= (bits >> q & 1) == 1 ? shares[q] : 1 - shares[q];
            }
            counts[Integer.bitCount(bits)] += chance;
        }
        assertThat(JointHistory.ofIndependent(shares)).containsExactly(counts, within(1e-12));
    }

    @Test
    void twoCountsAreComparedPairByPair() {
        CountDistribution a = new CountDistribution(List.of(0.2, 0.5, 0.3));
        CountDistribution b = new CountDistribution(List.of(0.6, 0.4));
        // a < b: a 0, b 1; equal: 0 0, 1 1; b < a: the rest
        assertThat(a.chanceFewerThan(b)).isCloseTo(0.08, within(1e-12));
        assertThat(a.chanceEqual(b)).isCloseTo(0.32, within(1e-12));
        assertThat(b.chanceFewerThan(a)).isCloseTo(0.60, within(1e-12));
        assertThat(a.percentile(0.05)).isZero();
        assertThat(a.percentile(0.95)).isEqualTo(2);
        assertThat(a.mean()).isCloseTo(1.1, within(1e-12));
    }

    @Test
    void aZoneTheCarLacksIsRefused() {
        assertThatThrownBy(() -> joint(100).notFactory(Set.of(new ZoneId("moonroof"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("moonroof");
    }

    @Test
    void moreSpotsAreWantedWhereTheQuestionIsOpen() {
        JointHistory joint = joint(60, 62, 58, 95, 61, 63);
        List<NextMeasurement> next = joint.next(SEED);
        assertThat(next).hasSize(6);
        assertThat(next.get(0).zone()).isEqualTo(new ZoneId("panel-3"));
        assertThat(next.get(0).expectedBits()).isGreaterThan(0.02);
        assertThat(next).isEqualTo(joint.next(SEED));
    }

    private static JointHistory joint(double... um) {
        List<ZoneEvidence> zones = new ArrayList<>();
        for (int q = 0; q < um.length; q++) {
            zones.add(
                    new ZoneEvidence(new ZoneId("panel-" + q), true, List.of(um[q]), 0, 0, Map.of(), Optional.empty()));
        }
        return new FinishEngine(FinishProfile.LACQUER)
                .joint(new FinishEvidence(FinishProfile.LACQUER, new Thickness(2000), zones));
    }
}
