package quarterlight.rust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits of ASTM D610-08 (2012), table 1, and of the stated rule on the figures of ISO 4628-3. */
class GradeReferenceTest {
    @ParameterizedTest(name = "{0} % is D610 grade {1}")
    @CsvSource({
        "0,10",
        ".01,10",
        ".0100001,9",
        ".03,9",
        ".0300001,8",
        ".05,8",
        ".1,8",
        ".1000001,7",
        ".3,7",
        ".3000001,6",
        ".5,6",
        "1,6",
        "1.000001,5",
        "1.5,5",
        "3,5",
        "3.000001,4",
        "8,4",
        "10,4",
        "10.00001,3",
        "12,3",
        "16,3",
        "16.00001,2",
        "33,2",
        "33.00001,1",
        "40,1",
        "50,1",
        "50.00001,0",
        "100,0"
    })
    void gradesAreThoseOfTheTable(double percent, int grade) {
        assertThat(D610Grade.of(percent)).isEqualTo(grade);
    }

    /** ASTM D610, table 1, from memory: each grade's greatest share, and what lies just beyond it. */
    @ParameterizedTest(name = "grade {1} reaches to {0} %")
    @CsvSource({".01,10", ".03,9", ".1,8", ".3,7", "1,6", "3,5", "10,4", "16,3", "33,2", "50,1"})
    void everyLimitHoldsFromBothSides(double percent, int grade) {
        assertThat(D610Grade.of(percent * .9999)).isEqualTo(grade);
        assertThat(D610Grade.of(percent)).isEqualTo(grade);
        assertThat(D610Grade.of(percent * 1.0001)).isEqualTo(grade - 1);
    }

    @ParameterizedTest(name = "Ri {1} reaches to {0} %")
    @CsvSource({".05,1", ".5,2", "1,3", "8,4"})
    void everyLimitOfRiHoldsFromBothSides(double percent, int degree) {
        assertThat(RiDegree.of(percent * .9999)).isEqualTo(degree);
        assertThat(RiDegree.of(percent)).isEqualTo(degree);
        assertThat(RiDegree.of(percent * 1.0001)).isEqualTo(degree + 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-.0001, 100.0001, Double.NaN})
    void whatIsNoShareIsRefused(double percent) {
        assertThatThrownBy(() -> D610Grade.of(percent)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RiDegree.of(percent)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aShareWorkedOutFromAreasIsNotPushedOverALimitByRounding() {
        assertThat(D610Grade.of(100 * 0.1 * 3 / 1000)).isEqualTo(9);
        assertThat(RiDegree.of(100 * 0.1 * 5 / 1000)).isEqualTo(1);
    }

    @ParameterizedTest(name = "{0} % is Ri {1}")
    @CsvSource({"0,0", ".001,1", ".05,1", ".0501,2", ".5,2", ".51,3", "1,3", "1.01,4", "8,4", "8.01,5", "40,5", "100,5"
    })
    void degreesFollowTheStatedRule(double percent, int degree) {
        assertThat(RiDegree.of(percent)).isEqualTo(degree);
    }

    @Test
    void spreadIsSuggestedFromTheSizesOfPatches() {
        assertThat(RustSpread.suggest(List.of())).isEmpty();
        assertThat(RustSpread.suggest(List.of(900.0, 30.0, 20.0))).contains(RustSpread.SPOT);
        assertThat(RustSpread.suggest(List.of(100.0, 90.0, 80.0, 110.0, 95.0, 120.0, 70.0, 60.0)))
                .contains(RustSpread.GENERAL);
        assertThat(RustSpread.suggest(List.of(1.0, 2.0, 3.0, 1.0, 2.0))).contains(RustSpread.PINPOINT);
        assertThat(RustSpread.suggest(List.of(8.0, 9.0, 7.0, 9.0, 60.0))).contains(RustSpread.HYBRID);
    }

    /** Each limit of the rule from both sides: a speck up to 10 mm2; 80 and 20 % in specks; 80 % in the three largest. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "10 10, PINPOINT",
        "10.01 10.01 10.01 10.01, GENERAL",
        "8 8 8 8 8.1 10.01, PINPOINT",
        "8 8 8 8 8 10.01, HYBRID",
        "10 10 80, HYBRID",
        "10 10 80.1, SPOT",
        "40 30 30 25, SPOT",
        "40 30 30 12.5 12.5, SPOT",
        "40 30 30 12.6 12.5, GENERAL",
    })
    void theTypeOfSpreadTurnsAtItsLimits(String patches, RustSpread type) {
        List<Double> mm2 =
                java.util.Arrays.stream(patches.split(" ")).map(Double::valueOf).toList();
        assertThat(RustSpread.suggest(mm2)).contains(type);
    }
}
