package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;

class NextMeasurementTest {
    /** A spot is unlike the others from a factor of 1.8 on, upward or downward, if it is the only one and there are two others. */
    @ParameterizedTest
    @CsvSource({
        "100 100 100 179, -1",
        "100 100 100 181, 3",
        "100 100 100 55.6, -1",
        "100 100 55.5 100, 2",
        "100 181, -1",
        "100 100 181, 2",
        "100 100 100 181 182, -1"
    })
    void oneSpotUnlikeTheMiddleOfTheOthersIsDoubtful(String um, int which) {
        ZoneEvidence zone = new ZoneEvidence(
                new ZoneId("hood"),
                true,
                Stream.of(um.split(" ")).map(Double::valueOf).toList(),
                0,
                0,
                Map.of(),
                Optional.empty(),
                List.of());
        assertThat(NextMeasurement.doubtful(zone)).isEqualTo(which < 0 ? OptionalInt.empty() : OptionalInt.of(which));
    }

    @ParameterizedTest
    @CsvSource({"0.5, 2, 250", "0.5, 0, 500", "0.0014, 1, 1", "0.0016, 1, 2"})
    void whatIsWonCountsByTheSpot(double bits, int spots, long millibits) {
        NextMeasurement next =
                new NextMeasurement(new ZoneId("hood"), NextMeasurement.Why.OPEN, spots, bits, "", "", List.of());
        assertThat(next.millibitsOfSpot()).isEqualTo(millibits);
    }
}
