package quarterlight.thickness.spot;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/** Which spot a reading at a point joins, on a view of one meter by one meter. */
class SpotNearbyTest {
    private static final PointDistance METER = (a, b) -> a.view() == b.view()
            ? OptionalDouble.of(1000 * Math.hypot(a.x() - b.x(), a.y() - b.y()))
            : OptionalDouble.empty();

    private final List<Recorded<Reading>> readings = new ArrayList<>();

    private static ViewPoint at(double xMm, double yMm) {
        return new ViewPoint(View.LEFT, xMm / 1000, yMm / 1000);
    }

    private SpotNearbyTest reading(Optional<ViewPoint> point, String spot, String exclude) {
        Reading reading = new Reading(
                new ZoneId("hood"),
                new GaugeValue.Measured(BigDecimal.valueOf(120), ThicknessUnit.UM),
                Optional.empty(),
                Optional.of(spot).filter(text -> !text.isEmpty()),
                point,
                Optional.empty(),
                Optional.of(exclude).filter(text -> !text.isEmpty()),
                Optional.empty());
        readings.add(new Recorded<>(new RecordId(readings.size() + 1L), reading));
        return this;
    }

    private Optional<SpotNearby> near(ViewPoint point) {
        return SpotNearby.of(readings, point, METER);
    }

    @Test
    void withinFourCentimetersItJoinsAndBeyondItDoesNot() {
        reading(Optional.of(at(100, 100)), "", "");
        assertThat(near(at(139.9, 100))).contains(new SpotNearby("1", List.of(new RecordId(1))));
        assertThat(near(at(140.1, 100))).isEmpty();
        assertThat(near(new ViewPoint(View.TOP, 0.1, 0.1))).as("another view").isEmpty();
    }

    @Test
    void ofTwoSpotsTheNearerOneIsJoinedUnderItsLabel() {
        reading(Optional.of(at(100, 100)), "3", "").reading(Optional.of(at(160, 100)), "A", "");
        assertThat(near(at(120, 100))).contains(new SpotNearby("3", List.of()));
        assertThat(near(at(135, 100))).contains(new SpotNearby("A", List.of()));
    }

    @Test
    void aSpotDoesNotCreepAlongThePanel() {
        reading(Optional.of(at(100, 100)), "1", "").reading(Optional.of(at(135, 100)), "1", "");
        assertThat(near(at(170, 100)))
                .as("near the second reading, not near the first")
                .isEmpty();
    }

    @Test
    void whatHasNoPointOrIsExcludedFoundsNoSpot() {
        reading(Optional.empty(), "", "").reading(Optional.of(at(100, 100)), "", "factory joint");
        assertThat(near(at(100, 100))).isEmpty();
    }

    @Test
    void aFreshLabelIsOneThatNoSpotBears() {
        reading(Optional.empty(), "1", "").reading(Optional.empty(), "2", "").reading(Optional.of(at(5, 5)), "", "");
        assertThat(near(at(5, 5)).orElseThrow().label()).isEqualTo("3");
    }

    /** However readings are thrown, those of one spot lie within 4 cm of its first one, and first ones lie apart. */
    @Test
    void spotsStayWithinTheirCircle() {
        Random random = new Random(5);
        for (int i = 0; i < 300; i++) {
            ViewPoint point = at(random.nextInt(400), random.nextInt(400));
            Optional<SpotNearby> spot = near(point);
            if (spot.isPresent() && !spot.get().toLabel().isEmpty()) {
                int row = (int) spot.get().toLabel().get(0).value() - 1;
                Reading old = readings.get(row).value();
                readings.set(
                        row,
                        new Recorded<>(
                                new RecordId(row + 1L),
                                new Reading(
                                        old.zone(),
                                        old.value(),
                                        old.time(),
                                        Optional.of(spot.get().label()),
                                        old.point(),
                                        old.mode(),
                                        old.exclude(),
                                        old.note())));
            }
            reading(Optional.of(point), spot.map(SpotNearby::label).orElse(""), "");
        }
        List<Recorded<Reading>> firsts = new ArrayList<>();
        for (Recorded<Reading> row : readings) {
            Optional<Recorded<Reading>> first = firsts.stream()
                    .filter(one -> row.value().spot().isPresent()
                            && one.value().spot().equals(row.value().spot()))
                    .findFirst();
            if (first.isPresent()) {
                assertThat(mm(first.get(), row)).isLessThanOrEqualTo(SpotNearby.WITHIN_MM);
            } else {
                firsts.forEach(one -> assertThat(mm(one, row)).isGreaterThan(SpotNearby.WITHIN_MM));
                firsts.add(row);
            }
        }
        assertThat(firsts).hasSizeBetween(30, 200);
    }

    private static double mm(Recorded<Reading> a, Recorded<Reading> b) {
        return METER.mm(a.value().point().orElseThrow(), b.value().point().orElseThrow())
                .orElseThrow();
    }
}
