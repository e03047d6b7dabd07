package quarterlight.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.thickness.statistics.Grubbs;
import quarterlight.thickness.statistics.MeanDifference;
import quarterlight.thickness.statistics.UncertaintyBudget;
import quarterlight.thickness.statistics.VarianceComponents;

/** Components of variance and differences of means against published figures. */
class VarianceReferenceTest {
    @Test
    void componentsOfTheDyestuffData() {
        VarianceComponents found = VarianceComponents.of(PublishedData.groups("dyestuff.txt"));
        assertThat(found.mean()).isEqualTo(1527.5);
        assertThat(found.meanSquareBetween()).isCloseTo(11271.5, within(1e-8));
        assertThat(found.meanSquareWithin()).isCloseTo(2451.25, within(1e-8));
        assertThat(found.between()).isCloseTo(1764.05, within(1e-8));
        assertThat(found.sdBetween()).isCloseTo(42.0006, within(1e-4));
        assertThat(found.sdWithin()).isCloseTo(49.5101, within(1e-4));
        assertThat(found.f()).isCloseTo(4.5983, within(1e-4));
        assertThat(found.p()).isCloseTo(0.0044, within(5e-5));
        assertThat(found.shrinkage()).isCloseTo(0.782527, within(1e-6));
    }

    @Test
    void analysisOfVarianceOfNistInstruments() {
        // NIST StRD, one-way analysis of variance, SiRstv: certified F 1.18046237440255
        VarianceComponents found = VarianceComponents.of(PublishedData.groups("sirstv.txt"));
        assertThat(found.f()).isCloseTo(1.18046237440255, within(1e-8));
        assertThat(found.sdWithin()).isCloseTo(0.104076068334656, within(1e-10));
    }

    @Test
    void analysisOfVarianceOfTheHandbooksResistors() {
        VarianceComponents found = VarianceComponents.of(PublishedData.groups("resistors.txt"));
        assertThat(found.f()).isCloseTo(9.59, within(0.006));
        assertThat(found.p()).isCloseTo(0.003248, within(1e-6));
    }

    @Test
    void aNegativeComponentIsZero() {
        // the group means agree better than the scatter within would have them
        VarianceComponents found =
                VarianceComponents.of(List.of(new double[] {1, 9}, new double[] {2, 8}, new double[] {0, 10}));
        assertThat(found.between()).isZero();
        assertThat(found.shrinkage()).isZero();
    }

    @Test
    void theGroupsOfBoxAndTiaoHaveNoComponentBetween() {
        // the documentation of R's lme4 (Dyestuff2) prints mean 5.6656, batch sd 0, residual sd 3.653 by maximum
        // likelihood: all in one
        List<double[]> groups = PublishedData.groups("dyestuff2.txt");
        VarianceComponents found = VarianceComponents.of(groups);
        assertThat(found.mean()).isCloseTo(5.6656, within(5e-5));
        assertThat(found.meanSquareBetween()).isLessThan(found.meanSquareWithin());
        assertThat(found.between()).isZero();
        double squares = 5 * found.meanSquareBetween() + 24 * found.meanSquareWithin();
        assertThat(Math.sqrt(squares / found.values())).isCloseTo(3.653, within(5e-4));
    }

    @Test
    void differenceOfMeansWithUnequalVariances() {
        // hand: 3 - 7 = -4; errors² 1/3·1 and 1/4·(20/3); df = 2²/((1/3)²/2 + (5/3)²/3) = 4.0755
        MeanDifference found = MeanDifference.of(new double[] {2, 3, 4}, new double[] {4, 6, 8, 10}, 0.95);
        assertThat(found.difference()).isCloseTo(-4, within(1e-12));
        assertThat(found.standardError()).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(found.degreesOfFreedom()).isCloseTo(4.0755, within(1e-4));
        assertThat(found.isClear()).isTrue();
        assertThat(found.high()).isBetween(-0.2, -0.05);
    }

    @Test
    void endGaugeOfTheGuide() {
        // JCGM 100:2008, example H.1 (nm): u 32, degrees of freedom 16, U99 93
        UncertaintyBudget budget = new UncertaintyBudget(List.of(
                new UncertaintyBudget.Part("standard", 25, 18),
                new UncertaintyBudget.Part("difference", 9.7, 25.6),
                new UncertaintyBudget.Part("expansion", 2.9, 50),
                new UncertaintyBudget.Part("temperature", 16.6, 2)));
        assertThat(budget.combined()).isCloseTo(31.7, within(0.05));
        assertThat(budget.effectiveDegreesOfFreedom()).isCloseTo(16.7, within(0.1));
        assertThat(budget.expanded(0.99)).isCloseTo(93, within(0.6));
        assertThat(budget.expanded(0.95)).isCloseTo(2.120 * 31.7, within(0.2));
    }

    @Test
    void tooLittleDataIsRefused() {
        double[] two = {1, 2};
        double[] one = {3};
        assertThat(VarianceComponents.of(List.of(two, one)).values()).isEqualTo(3);
        assertThatThrownBy(() -> VarianceComponents.of(List.of(two))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VarianceComponents.of(List.of(one, one))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VarianceComponents.of(List.of(two, two, new double[0])))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Grubbs.extreme(two)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Grubbs.extreme(new double[] {1, 2, 3, 3}).value()).isEqualTo(1);
    }

    /** By hand: sizes 1 and 3, so n0 = (4 - 10 / 4) / 1 = 1.5; means 1 and 5, mean of all 4, MSB 12, MSW 8 / 2. */
    @Test
    void unequalSizesByHand() {
        VarianceComponents found = VarianceComponents.of(List.of(new double[] {1}, new double[] {3, 5, 7}));
        assertThat(found.meanSquareBetween()).isCloseTo(12, within(1e-12));
        assertThat(found.meanSquareWithin()).isCloseTo(4, within(1e-12));
        assertThat(found.between()).isCloseTo(8 / 1.5, within(1e-12));
        assertThat(found.shrinkage()).isCloseTo(8 / 1.5 / (8 / 1.5 + 4 / 1.5), within(1e-12));
    }
}
