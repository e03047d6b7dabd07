package quarterlight.thickness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.thickness.PublishedData;

/** Certified values of NIST StRD (univariate), and intervals of the NIST/SEMATECH e-Handbook. */
class MeanIntervalReferenceTest {
    private static final double RELATIVE = 1e-8;

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Lew, 200, -177.435000000000, 277.332168044316",
        "Lottery, 218, 518.958715596330, 291.699727470969",
        "Mavro, 50, 2.00185600000000, 0.000429123454003053",
        "Michelso, 100, 299.852400000000, 0.0790105478190518",
        "NumAcc1, 3, 10000002, 1",
        "NumAcc2, 1001, 1.2, 0.1",
        "NumAcc3, 1001, 1000000.2, 0.1",
        "NumAcc4, 1001, 10000000.2, 0.1"
    })
    void meanAndSdAgreeWithTheCertifiedValues(String set, int n, double mean, double sd) {
        MeanInterval found = MeanInterval.of(PublishedData.strd(set), 0.95);
        assertThat(found.n()).isEqualTo(n);
        assertThat(found.mean()).isCloseTo(mean, within(RELATIVE * Math.abs(mean)));
        assertThat(found.sd()).isCloseTo(sd, within(RELATIVE * sd));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Lew, -162, 401.0439",
        "Lottery, 522.5, 376.5810",
        "Mavro, 2.0018, 0.000444781",
        "Michelso, 299.85, 0.0667171"
    })
    void medianAndScaledMadOfTheSameSets(String set, double median, double mad) {
        assertThat(Quantiles.median(PublishedData.strd(set))).isCloseTo(median, within(RELATIVE * Math.abs(median)));
        assertThat(Quantiles.scaledMad(PublishedData.strd(set))).isCloseTo(mad, within(4e-6 * mad));
    }

    @Test
    void intervalOfTheMeanAsTheHandbookPrintsIt() {
        // NIST/SEMATECH e-Handbook 1.3.5.2, ZARR13
        MeanInterval found = MeanInterval.of(195, 9.261460, 0.022789, 0.95);
        assertThat(found.low()).isCloseTo(9.258242, within(1.5e-6));
        assertThat(found.high()).isCloseTo(9.264679, within(1.5e-6));
    }

    @Test
    void oneValueHasNoInterval() {
        assertThatThrownBy(() -> MeanInterval.of(new double[] {1}, 0.95)).isInstanceOf(IllegalArgumentException.class);
    }
}
