package quarterlight.finish.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NextSpotsTest {
    /** Eight spots bring 0.5 bits; the least of 1, 2, 3, 5, 8 that brings 0.45 is proposed. */
    @ParameterizedTest
    @CsvSource({".4501, 1", ".4499, 2", ".4, 2", ".1, 2"})
    void nineTenthsOfWhatEightSpotsBringIsEnough(double afterOne, int spots) {
        double[] after = {.9, .9 - afterOne, .9 - .46, .9 - .47, .9 - .47, .9 - .48, .9 - .49, .9 - .49, .9 - .5};
        NextSpots.Gain gain = NextSpots.enough(.9, after);
        assertThat(gain.spots()).isEqualTo(spots);
        assertThat(gain.bits()).isCloseTo(spots == 1 ? afterOne : .46, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({".44, .44, .44, 8", ".44, .44, .46, 5", ".44, .46, .46, 3"})
    void fourSixAndSevenAreNotProposed(double two, double three, double five, int spots) {
        double[] after = {.9, .9, .9 - two, .9 - three, .9 - .5, .9 - five, .9 - .5, .9 - .5, .9 - .5};
        assertThat(NextSpots.enough(.9, after).spots()).isEqualTo(spots);
    }
}
