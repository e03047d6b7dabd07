package quarterlight.finish.history;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The scale of the ENFSI guideline (2015): tested values, and edges that belong to the lower band. */
class EvidenceStrengthReferenceTest {
    @ParameterizedTest
    @CsvSource({
        "1, NONE, false",
        "2, NONE, false",
        "5, WEAK, true",
        "10, WEAK, true",
        "50, MODERATE, true",
        "100, MODERATE, true",
        "500, MODERATELY_STRONG, true",
        "1000, MODERATELY_STRONG, true",
        "5000, STRONG, true",
        "10000, STRONG, true",
        "10001, VERY_STRONG, true",
        "500000, VERY_STRONG, true",
        "1000000, VERY_STRONG, true",
        "50000000, EXTREMELY_STRONG, true",
        "0.002, MODERATELY_STRONG, false",
        "0.1, WEAK, false"
    })
    void wordsOfALikelihoodRatio(double ratio, EvidenceStrength.Band band, boolean forRefinishing) {
        assertThat(EvidenceStrength.ofLog10(Math.log10(ratio))).isEqualTo(new EvidenceStrength(band, forRefinishing));
    }
}
