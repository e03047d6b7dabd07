package quarterlight.finish.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.FinishProfile;

/** The grid of levels against straight lines and the normal law; laws of judged numbers against their own percentiles. */
class LatticeTest {
    @Test
    void theGridReachesFromHalfAMilToSixty() {
        assertThat(Math.exp(Lattice.at(0))).isCloseTo(0.5, within(1e-12));
        assertThat(Math.exp(Lattice.at(Lattice.POINTS - 1))).isGreaterThanOrEqualTo(60);
        assertThat(Math.exp(Lattice.at(Lattice.POINTS - 2))).isLessThan(60);
        assertThat(Lattice.at(8) - Lattice.at(7)).isCloseTo(Lattice.STEP, within(1e-12));
    }

    /** Between .12 and .17 the ratio decides: their geometric mean is .1428. */
    @ParameterizedTest
    @CsvSource({".001, 0", ".12, 3", ".142, 3", ".1435, 4", ".17, 4", "9, 7"})
    void theNearestWidthInRatioIsUsed(double sd, int width) {
        assertThat(Lattice.width(sd)).isEqualTo(width);
        assertThat(Lattice.widths()).isEqualTo(8);
    }

    @Test
    void betweenTwoPointsItLooksAlongAStraightLineAndBeyondTheEndsAtTheEnds() {
        double[] line = new double[Lattice.POINTS];
        for (int i = 0; i < line.length; i++) {
            line[i] = 3 * Lattice.at(i) + 1;
        }
        for (double level : new double[] {Lattice.at(0), Lattice.at(5), Lattice.at(5) + 0.01, Lattice.at(40) + 0.044}) {
            assertThat(Lattice.look(line, Lattice.place(level))).isCloseTo(3 * level + 1, within(1e-9));
        }
        assertThat(Lattice.look(line, Lattice.place(Lattice.at(0) - 1))).isEqualTo(line[0]);
        assertThat(Lattice.look(line, Lattice.place(99))).isEqualTo(line[line.length - 1]);
    }

    /** A kernel leaves a straight line as it is, adds its variance to a square, and keeps what it spreads. */
    @Test
    void smoothingIsTheMeanOverANormalLevel() {
        int middle = Lattice.POINTS / 2;
        double[] line = new double[Lattice.POINTS];
        double[] square = new double[Lattice.POINTS];
        double[] spike = new double[Lattice.POINTS];
        for (int i = 0; i < line.length; i++) {
            double x = Lattice.at(i) - Lattice.at(middle);
            line[i] = 2 * x + 7;
            square[i] = x * x;
        }
        spike[middle] = 1;
        int width = Lattice.width(.17);
        assertThat(Lattice.smoothed(line, width)[middle]).isCloseTo(7, within(1e-9));
        assertThat(Lattice.smoothed(square, width)[middle]).isCloseTo(.17 * .17, within(.17 * .17 * .02));
        double[] spread = Lattice.smoothed(spike, width);
        assertThat(Arrays.stream(spread).sum()).isCloseTo(1, within(1e-9));
        assertThat(spread[middle + 4] / spread[middle])
                .isCloseTo(Math.exp(-.5 * Math.pow(4 * Lattice.STEP / .17, 2)), within(1e-9));
        double[] ones = new double[Lattice.POINTS];
        Arrays.fill(ones, 1);
        assertThat(Lattice.smoothed(ones, width)[0]).isBetween(0.5, 0.6);
    }

    @Test
    void theNormalLawIsThatOfTheTables() {
        assertThat(Lattice.normal(0, 0, 1)).isCloseTo(0.3989422804, within(1e-9));
        assertThat(Lattice.normal(3, 1, 2)).isCloseTo(0.2419707245 / 2, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(JudgedNumber.class)
    void lowAndHighAreTheFifthAndNinetyFifthPercentile(JudgedNumber number) {
        assertThat(number.at(-1.6448536269514722)).isCloseTo(number.low(), within(1e-9));
        assertThat(number.at(1.6448536269514722)).isCloseTo(number.high(), within(1e-9));
        double middle = number.at(0);
        assertThat(middle).isBetween(number.low(), number.high());
        double expected =
                switch (number.law()) {
                    case NORMAL -> (number.low() + number.high()) / 2;
                    case LOG -> Math.sqrt(number.low() * number.high());
                    case LOGIT -> {
                        double odds =
                                Math.sqrt(number.low() / (1 - number.low()) * number.high() / (1 - number.high()));
                        yield odds / (1 + odds);
                    }
                };
        assertThat(middle).isCloseTo(expected, within(1e-9));
    }

    /** The level of a kind of finish is a density: it sums to one, and most of it lies about the published median. */
    @ParameterizedTest
    @CsvSource({"LACQUER, 5.2", "ENAMEL, 5.8", "MODERN, 4.5", "UNKNOWN, 5.0"})
    void theFactoryLevelIsADensityAboutItsMedian(FinishProfile profile, double mil) {
        FactoryLevel level = FactoryLevel.of(profile);
        double sum = 0;
        double best = 0;
        double at = 0;
        for (double log = -3; log < 6; log += 0.001) {
            double density = level.density(log, 0.1, 0.2);
            sum += density * 0.001;
            if (density > best) {
                best = density;
                at = log;
            }
        }
        assertThat(sum).isCloseTo(1, within(1e-6));
        assertThat(at).isCloseTo(Math.log(mil) + 0.1, within(0.03));
        assertThat(level.density(Math.log(mil), 0, 0.1)).isGreaterThan(level.density(Math.log(mil), 0, 0.2));
        double other = 0.18 * Lattice.normal(Math.log(30), Math.log(4.2), 0.42);
        assertThat(level.density(Math.log(30), 0, 0.05)).isCloseTo(other, within(1e-9));
    }
}
