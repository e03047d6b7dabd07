package quarterlight.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.table.ZoneTable;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.thickness.statistics.MeanDifference;

/** Which panels are set against one another, by hand. */
class CarThicknessTest {
    private final VisitBuilder visit = new VisitBuilder();

    private void readings(String zone, String... um) {
        for (String one : um) {
            visit.reading(zone, one);
        }
    }

    private CarThickness car() {
        return CarThickness.of(
                ThicknessSurvey.of(visit.build(), ZoneTable.load(), GaugeCorrection.NONE), ZoneTable.load());
    }

    private static List<String> pairs(CarThickness car) {
        return car.sides().stream()
                .map(pair -> pair.left().value() + " " + pair.right().value())
                .toList();
    }

    private static List<String> against(CarThickness car) {
        return car.against().stream().map(one -> one.zone().value()).toList();
    }

    @Test
    void aPairNeedsTwoSpotsOnEitherSide() {
        readings("fender-left", "100", "110");
        readings("fender-right", "120", "130");
        readings("quarter-left", "100", "110");
        readings("quarter-right", "120");
        readings("door-front-left", "100");
        readings("door-front-right", "120", "130");
        assertThat(pairs(car())).containsExactly("fender-left fender-right");
        CarThickness.Pair pair = car().sides().get(0);
        assertThat(pair.difference().difference()).isCloseTo(-20, within(1e-9));
    }

    @Test
    void aZoneIsSetAgainstTheRestFromTwoSpotsOn() {
        readings("hood", "100", "110");
        readings("roof", "140");
        assertThat(against(car())).isEmpty();
        readings("roof", "160");
        assertThat(against(car())).containsExactlyInAnyOrder("hood", "roof");
        assertThat(difference("hood")).isCloseTo(-45, within(1e-9));
        readings("decklid", "210");
        assertThat(against(car())).containsExactlyInAnyOrder("hood", "roof");
        assertThat(difference("hood")).isCloseTo(105 - 170, within(1e-9));
    }

    private double difference(String zone) {
        return car().against().stream()
                .filter(one -> one.zone().equals(new ZoneId(zone)))
                .findFirst()
                .orElseThrow()
                .difference()
                .difference();
    }

    @Test
    void componentsNeedTwoPanelsOneWithTwoSpots() {
        readings("hood", "100", "110");
        assertThat(car().components()).isEmpty();
        readings("roof", "140");
        assertThat(car().components().orElseThrow().values()).isEqualTo(3);
    }

    @Test
    void twoSingleSpotsHaveNoComponents() {
        readings("hood", "100");
        readings("roof", "140");
        assertThat(car().components()).isEmpty();
    }

    @Test
    void panelsWithoutANumberAndZonesWithoutFinishTakeNoPart() {
        readings("hood", "100", "110");
        readings("roof", "none", "over");
        readings("rail-front-left", "300", "400");
        CarThickness car = car();
        assertThat(against(car)).isEmpty();
        assertThat(car.components()).isEmpty();
    }

    @Test
    void aDifferenceIsClearWhereItsIntervalLeavesZeroOut() {
        assertThat(new MeanDifference(1, 1, 4, .1, 2).isClear()).isTrue();
        assertThat(new MeanDifference(1, 1, 4, 0, 2).isClear()).isFalse();
        assertThat(new MeanDifference(0, 1, 4, -1, 1).isClear()).isFalse();
        assertThat(new MeanDifference(-1, 1, 4, -2, 0).isClear()).isFalse();
        assertThat(new MeanDifference(-1, 1, 4, -2, -.1).isClear()).isTrue();
    }
}
