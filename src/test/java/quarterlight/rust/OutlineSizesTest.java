package quarterlight.rust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.units.Area;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;

class OutlineSizesTest {
    private static TraceArea area(OptionalDouble mm2, double sd) {
        return new TraceArea(
                new RecordId(1),
                new PhotoId(1),
                TraceKind.SURFACE,
                new ZoneId("hood"),
                mm2.isPresent() ? Optional.of(new Area(mm2.getAsDouble())) : Optional.empty(),
                mm2.isPresent() ? OptionalDouble.of(sd) : OptionalDouble.empty(),
                List.of());
    }

    @Test
    void theDrawnSizesEncloseTwoStandardDeviationsLessAndMore() {
        OutlineSizes sizes = OutlineSizes.of(area(OptionalDouble.of(100), 18)).orElseThrow();
        assertThat(100 * sizes.least() * sizes.least()).isCloseTo(64, within(1e-9));
        assertThat(100 * sizes.greatest() * sizes.greatest()).isCloseTo(136, within(1e-9));
    }

    @Test
    void anErrorAsLargeAsTheAreaLeavesNothingOfTheLeastSize() {
        assertThat(OutlineSizes.of(area(OptionalDouble.of(100), 60))
                        .orElseThrow()
                        .least())
                .isZero();
        assertThat(OutlineSizes.of(area(OptionalDouble.empty(), 0))).isEmpty();
    }
}
