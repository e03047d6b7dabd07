package quarterlight.walk.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Counted gaps: bins by their definition, the regression by what a best fit must fulfill, odds and pace by hand. */
class GapCountsTest {
    /** Bin i holds gaps from 2^((i-8)/2) to 2^((i-7)/2) times the usual one, here 10 s. */
    @ParameterizedTest
    @CsvSource({
        "10.001, 8",
        "9.999, 7",
        "14.143, 9",
        "14.142, 8",
        "20.001, 10",
        "5.001, 6",
        "0.6251, 0",
        "0.01, 0",
        "0, 0",
        "640.1, 19",
        "452.5, 18",
        "100000, 19"
    })
    void aGapGoesToTheBinOfItsLength(double gap, int bin) {
        assertThat(GapCounts.bin(gap, 10)).isEqualTo(bin);
    }

    private static GapCounts counts(int... gapsAndMoves) {
        List<Integer> gaps = new ArrayList<>(GapCounts.NONE.gaps());
        List<Integer> moved = new ArrayList<>(GapCounts.NONE.moved());
        for (int i = 0; i < gapsAndMoves.length; i += 3) {
            gaps.set(gapsAndMoves[i], gapsAndMoves[i + 1]);
            moved.set(gapsAndMoves[i], gapsAndMoves[i + 2]);
        }
        return new GapCounts(gaps, moved, GapCounts.NONE.reached(), GapCounts.NONE.ended());
    }

    /** At the best fit the slopes of the log likelihood with its prior (two gaps' worth at -1.2 and 1) are nothing. */
    @Test
    void theRegressionLiesWhereTheLikelihoodIsLevel() {
        for (GapCounts counts : List.of(
                counts(4, 30, 1, 8, 50, 9, 11, 20, 12, 15, 9, 9),
                counts(2, 3, 3, 18, 4, 0),
                counts(8, 200, 100),
                GapCounts.NONE)) {
            double[] fit = counts.logistic();
            double a = 2 * (-1.2 - fit[0]);
            double b = 2 * (1 - fit[1]);
            for (int i = 0; i < GapCounts.BINS; i++) {
                double x = Math.log(Math.pow(2, (i - 8 + 0.5) / 2));
                double rest = counts.moved().get(i) - counts.gaps().get(i) / (1 + Math.exp(-fit[0] - fit[1] * x));
                a += rest;
                b += rest * x;
            }
            assertThat(a).isCloseTo(0, within(1e-6));
            assertThat(b).isCloseTo(0, within(1e-6));
        }
        assertThat(GapCounts.NONE.logistic()).containsExactly(-1.2, 1);
    }

    @Test
    void oddsOfAMoveAreThoseCountedWithHalfAMoveAndOneAndAHalfStays() {
        assertThat(counts(8, 10, 3).oddsOfMove()).isCloseTo(3.5 / 8.5, within(1e-12));
        assertThat(GapCounts.NONE.oddsOfMove()).isCloseTo(1.0 / 3, within(1e-12));
    }

    @Test
    void countsOfTwoVisitsAddUp() {
        GapCounts one = new GapCounts(
                Collections.nCopies(GapCounts.BINS, 2),
                Collections.nCopies(GapCounts.BINS, 1),
                Collections.nCopies(GapCounts.PHASES, 5),
                Collections.nCopies(GapCounts.PHASES, 3));
        GapCounts both = one.plus(one.plus(GapCounts.NONE));
        assertThat(both.total()).isEqualTo(4 * GapCounts.BINS);
        assertThat(both.moved()).containsOnly(2);
        assertThat(both.reached()).containsOnly(10);
        assertThat(both.ended()).containsOnly(6);
        assertThat(both.law().movesOn(0)).isBetween(0.4, 0.6);
    }

    @Test
    void theUsualGapIsTheMedianAndAtLeastHalfASecond() {
        assertThat(GapCounts.usual(new double[] {9, 1, 5})).isEqualTo(5);
        assertThat(GapCounts.usual(new double[] {0.1, 0.4, 0.5})).isEqualTo(0.5);
        assertThat(GapCounts.usual(new double[] {0.1, 0.51, 0.6})).isEqualTo(0.51);
        assertThat(GapCounts.usual(new double[] {})).isEqualTo(1);
    }
}
