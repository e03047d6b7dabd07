package quarterlight.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterlight.visit.photo.PhotoId;

class SharpnessRangeTest {
    private static Map<PhotoId, Double> sharpness(double... values) {
        Map<PhotoId, Double> map = new HashMap<>();
        for (double value : values) {
            map.put(new PhotoId(map.size() + 1), value);
        }
        return map;
    }

    @Test
    void oneBlurredPhotoAmongSharpOnesIsSoft() {
        SharpnessRange range = SharpnessRange.of(sharpness(900, 1000, 1100, 950, 1050, 980, 1020, 1010, 40));
        assertThat(range.soft()).containsExactly(new PhotoId(9));
        assertThat(range.median()).isCloseTo(1000, within(1e-9));
    }

    @Test
    void theLimitIsTwoRobustDeviationsUnderTheMedianOfLogarithms() {
        // logarithms to the base e: 0, 1, 2, ... 8; median 4; deviations 0 1 1 2 2 3 3 4 4, their median 2
        double[] values = new double[9];
        for (int i = 0; i < 9; i++) {
            values[i] = Math.exp(i);
        }
        SharpnessRange range = SharpnessRange.of(sharpness(values));
        assertThat(Math.log(range.low())).isCloseTo(4 - 2 * 1.4826 * 2, within(1e-9));
        assertThat(range.soft()).isEmpty();
    }

    @Test
    void photosThatAreAllAlikeAreNotSoft() {
        assertThat(SharpnessRange.of(sharpness(500, 501, 499, 500, 502, 498, 500, 470))
                        .soft())
                .isEmpty();
    }

    @Test
    void aFewPhotosAreNotComparedAtAll() {
        assertThat(SharpnessRange.of(sharpness(1000, 1000, 1)).soft()).isEmpty();
        assertThat(SharpnessRange.of(Map.of())).isEqualTo(SharpnessRange.NONE);
    }
}
