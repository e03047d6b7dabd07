package quarterlight.walk.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GapReadingsTest {
    /** 30 stops of so many photos, 5 s apart, 15 s between stops, each spread by a quarter. */
    private static double[] gaps(int photos, long seed) {
        Random random = new Random(seed);
        double[] gaps = new double[30 * photos];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = (i % photos == photos - 1 ? 15 : 5) * Math.exp(0.25 * random.nextGaussian());
        }
        return gaps;
    }

    @ParameterizedTest
    @CsvSource({"4, 1", "4, 2", "7, 1", "7, 2"})
    void longGapsAmongShortOnesAreMoves(int photos, long seed) {
        double[] gaps = gaps(photos, seed);
        List<GapReading> readings = GapReadings.of(gaps, GapCounts.NONE, 40);
        GapReading best = readings.stream()
                .max(java.util.Comparator.comparingDouble(GapReading::logWeight))
                .orElseThrow();
        double moves = 0;
        double stays = 0;
        for (int i = 1; i < gaps.length; i++) {
            boolean move = i % photos == photos - 1;
            moves += move ? best.ifStayed()[i] / 30 : 0;
            stays += move || i % photos == 0 ? 0 : best.ifStayed()[i] / (30 * (photos - 2));
        }
        assertThat(moves).isGreaterThan(0.9);
        assertThat(stays).isLessThan(0.1);
    }

    @Test
    void sevenPhotosAStopAreASlowerPaceThanFour() {
        assertThat(pace(gaps(7, 3))).isBetween(0.13, 0.2);
        assertThat(pace(gaps(4, 3))).isBetween(0.27, 0.36);
    }

    private static double pace(double[] gaps) {
        return GapReadings.of(gaps, GapCounts.NONE, 40).stream()
                .max(java.util.Comparator.comparingDouble(GapReading::logWeight))
                .orElseThrow()
                .pace();
    }

    @Test
    void gapsOfAHeavyTailAndBurstsAreKnownAsSuch() {
        Random random = new Random(4);
        double[] heavy =
                random.doubles(220).map(u -> 4 * Math.pow(1 - u, -1 / 1.2)).toArray();
        assertThat(GapReadings.of(heavy, GapCounts.NONE, 40)).allMatch(reading -> reading.heavyTailed() > 0.9);
        double[] bursts = random.doubles(220)
                .map(u -> (u < 0.6 ? 0.8 : 9) * Math.exp(0.3 * random.nextGaussian()))
                .toArray();
        assertThat(GapReadings.of(bursts, GapCounts.NONE, 40)).anyMatch(reading -> reading.inBursts() > 0.5);
        assertThat(GapReadings.of(gaps(4, 5), GapCounts.NONE, 40)).allMatch(reading -> reading.inBursts() < 0.5);
    }

    @Test
    void fromEnoughCountedGapsOnTheEarlierVisitsCountToo() {
        List<Integer> none = Collections.nCopies(GapCounts.BINS, 0);
        GapCounts counts = new GapCounts(
                with(none, 8, 30, 11, 10), with(none, 8, 0, 11, 10), GapCounts.NONE.reached(), GapCounts.NONE.ended());
        double[] gaps = {5, 5, 5, 15, 5};

        List<GapReading> own = GapReadings.of(gaps, counts, 41);
        List<GapReading> read = GapReadings.of(gaps, counts, 40);
        assertThat(read).hasSize(2);
        assertThat(own)
                .anyMatch(one -> Arrays.equals(one.ifStayed(), read.get(1).ifStayed()));
        assertThat(read.get(0).ifStayed()[3]).isGreaterThan(0.8);
        assertThat(read.get(0).ifStayed()[2]).isLessThan(0.2);
    }

    private static List<Integer> with(List<Integer> zeros, int bin, int count, int other, int more) {
        List<Integer> list = new java.util.ArrayList<>(zeros);
        list.set(bin, count);
        list.set(other, more);
        return list;
    }

    @Test
    void noGapIsCertainEitherWay() {
        double[] gaps = gaps(7, 6);
        for (GapReading reading : GapReadings.of(gaps, GapCounts.NONE, 40)) {
            for (double[] chances : List.of(reading.ifCome(), reading.ifStayed())) {
                assertThat(Arrays.stream(chances).max().orElseThrow()).isLessThanOrEqualTo(0.97);
                assertThat(Arrays.stream(chances).min().orElseThrow()).isGreaterThanOrEqualTo(0.001);
            }
        }
        GapReading first = GapReadings.of(gaps, GapCounts.NONE, 40).get(0);
        assertThat(first.ifStayed()[60]).as("within a stop").isEqualTo(0.001);
        assertThat(first.ifStayed()[62]).as("a move").isEqualTo(0.97);
    }

    @Test
    void aLawIsThePoissonNumberOfPhotosBeyondTheLeast() {
        StopLaw law = StopLaw.atLeast(3, 4, 8);
        double left = 1;
        double[] chance = new double[8];
        for (int k = 0; k < 8; k++) {
            chance[k] = left * law.movesOn(k);
            left -= chance[k];
        }
        double[] wanted = {0, 0, Math.exp(-4), 4 * Math.exp(-4), 8 * Math.exp(-4), 32 / 3.0 * Math.exp(-4)};
        assertThat(Arrays.copyOf(chance, 6)).containsExactly(wanted, within(1e-12));
    }

    @Test
    void countedStopsMoveTheLawAndWhatIsUsualCountsAsTwoOfThem() {
        StopLaw usual = StopLaw.atLeast(1, 3, 8);
        StopLaw law = StopLaw.counted(List.of(10, 8, 0, 0, 0, 0, 0, 0), List.of(2, 8, 0, 0, 0, 0, 0, 0), usual);
        assertThat(law.movesOn(0)).isCloseTo((2 + 2 * usual.movesOn(0)) / 12, within(1e-12));
        assertThat(law.movesOn(1)).isCloseTo((8 + 2 * usual.movesOn(1)) / 10, within(1e-12));
        assertThat(law.movesOn(2)).isCloseTo(usual.movesOn(2), within(1e-12));
    }
}
