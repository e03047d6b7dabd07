package quarterlight.thickness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.thickness.PublishedData;

/** Grubbs' test and robust values against published figures. */
class OutlierReferenceTest {
    /** G. L. Tietjen and R. H. Moore, Technometrics 14 (1972); NIST/SEMATECH e-Handbook 1.3.5.17.1. */
    private static final double[] TIETJEN_MOORE = {199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};

    @Test
    void grubbsOnTheHandbooksData() {
        Grubbs.Extreme extreme = Grubbs.extreme(TIETJEN_MOORE);
        assertThat(extreme.value()).isEqualTo(245.57);
        assertThat(extreme.statistic()).isCloseTo(2.468765, within(1e-6));
        assertThat(Grubbs.criticalTwoSided(8, 0.05)).isCloseTo(2.126645, within(1e-6));
        // an outlier by the test, and within the practical floor of a quarter of the median
        assertThat(Outlier.among(TIETJEN_MOORE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "3, 1.154",
        "4, 1.481",
        "5, 1.715",
        "6, 1.887",
        "7, 2.020",
        "8, 2.127",
        "9, 2.215",
        "10, 2.290",
        "12, 2.412",
        "15, 2.548"
    })
    void tabledCriticalValues(int n, double critical) {
        assertThat(Grubbs.criticalTwoSided(n, 0.05)).isCloseTo(critical, within(1e-3));
    }

    @Test
    void withoutTheOutlierNothingIsNamed() {
        assertThat(Outlier.among(Arrays.copyOf(TIETJEN_MOORE, 7))).isEmpty();
    }

    @Test
    void equalSpotsHaveNoOutlier() {
        assertThat(Outlier.among(new double[] {80, 80, 80, 80, 80, 80, 80})).isEmpty();
    }

    @Test
    void grubbsFromThreeSpotsOnAndOnlyBeyondTheFloor() {
        Outlier high = new Outlier(1000, Outlier.Rule.GRUBBS);
        assertThat(Outlier.among(new double[] {127, 128, 1000})).containsExactly(high);
        assertThat(Outlier.among(new double[] {127, 1000})).isEmpty();
        assertThat(Outlier.among(new double[] {})).isEmpty();
        // the test alone would name 152: the floor is 25 um, or a quarter of the median
        assertThat(Outlier.among(new double[] {80, 80.1, 79.9, 80, 104.9})).isEmpty();
        assertThat(Outlier.among(new double[] {80, 80.1, 79.9, 80, 105.1}))
                .containsExactly(new Outlier(105.1, Outlier.Rule.GRUBBS));
        assertThat(Outlier.among(new double[] {200, 200.1, 199.9, 200, 249})).isEmpty();
        assertThat(Outlier.among(new double[] {200, 200.1, 199.9, 200, 251}))
                .containsExactly(new Outlier(251, Outlier.Rule.GRUBBS));
    }

    @Test
    @Tag("simulation")
    void fewCleanPanelsAreFlagged() {
        java.util.Random random = new java.util.Random(11);
        for (int spots = 3; spots <= 8; spots++) {
            int flagged = 0;
            for (int panel = 0; panel < 4000; panel++) {
                double[] um = new double[spots];
                for (int n = 0; n < spots; n++) {
                    um[n] = 127 * Math.exp(.12 * random.nextGaussian());
                }
                flagged += Outlier.among(um).size();
            }
            assertThat(flagged / 4000.0).as(spots + " spots").isLessThan(.07);
        }
    }

    @Test
    void copperDataRobust() {
        double[] copper = PublishedData.sample("copper.txt");
        assertThat(Quantiles.median(copper)).isCloseTo(3.385, within(1e-12));
        assertThat(Quantiles.scaledMad(copper)).isCloseTo(0.52632, within(1e-5));
    }

    @Test
    void nickelDataRobust() {
        double[] abbey = PublishedData.sample("abbey.txt");
        assertThat(Quantiles.median(abbey)).isEqualTo(11);
        assertThat(Quantiles.scaledMad(abbey)).isCloseTo(4.4478, within(1e-4));
    }
}
