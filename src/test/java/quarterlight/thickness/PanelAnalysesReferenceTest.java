package quarterlight.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.table.ZoneTable;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.thickness.statistics.MeanDifference;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.ViewPoint;

/**
 * Panels set against each other, on published data: W. S. Gosset's (Student's) sleep data, 1908, as in R's data set sleep, 100 added to every
 * value, which no difference feels. Welch's test of group 1 less group 2 there: difference -1.58, 17.776 degrees of freedom, 95 % interval
 * -3.3654832 to 0.2054832.
 */
class PanelAnalysesReferenceTest {
    private static final double[] FIRST = {.7, -1.6, -.2, -1.2, -.1, 3.4, 3.7, .8, 0, 2};
    private static final double[] SECOND = {1.9, .8, 1.1, .1, -.1, 4.4, 5.5, 1.6, 4.6, 3.4};

    private final VisitBuilder visit = new VisitBuilder();

    /** Deals the values over the zones in turn. */
    private void spots(double[] values, String... zones) {
        for (int n = 0; n < values.length; n++) {
            visit.reading(zones[n % zones.length], String.valueOf(Math.round(10 * values[n] + 1000) / 10.0));
        }
    }

    private ThicknessSurvey survey(VisitRecord record) {
        return ThicknessSurvey.of(record, ZoneTable.load(), GaugeCorrection.NONE);
    }

    private PanelAnalyses analyses() {
        VisitRecord record = visit.build();
        return PanelAnalyses.of(record, survey(record), ZoneTable.load());
    }

    private static void isPublished(MeanDifference found) {
        assertThat(found.difference()).isCloseTo(-1.58, within(1e-9));
        assertThat(found.degreesOfFreedom()).isCloseTo(17.776, within(5e-4));
        assertThat(found.low()).isCloseTo(-3.3654832, within(5e-7));
        assertThat(found.high()).isCloseTo(.2054832, within(5e-7));
        assertThat(found.isClear()).isFalse();
    }

    @Test
    void leftLessRight() {
        spots(FIRST, "fender-left");
        spots(SECOND, "fender-right");
        CarThickness car = CarThickness.of(survey(visit.build()), ZoneTable.load());
        isPublished(car.sides().get(0).difference());
    }

    @Test
    void onePanelLessTheRestOfTheCar() {
        spots(FIRST, "quarter-right");
        spots(SECOND, "hood", "door-front-left", "roof");
        CarThickness car = CarThickness.of(survey(visit.build()), ZoneTable.load());
        isPublished(car.against().stream()
                .filter(one -> one.zone().equals(new ZoneId("quarter-right")))
                .findFirst()
                .orElseThrow()
                .difference());
    }

    /** The panels that meet the right quarter count together; the hood and the left side, far thicker, do not meet it. */
    @Test
    void aPanelLessItsNeighbors() {
        spots(FIRST, "quarter-right");
        spots(SECOND, "door-front-right", "decklid");
        visit.reading("hood", "400").reading("quarter-left", "420").reading("door-front-left", "430");
        isPublished(analyses().neighbors().stream()
                .filter(one -> one.zone().equals(new ZoneId("quarter-right")))
                .findFirst()
                .orElseThrow()
                .difference());
    }

    @Test
    void levelPanelsLessUprightOnes() {
        spots(FIRST, "hood", "roof", "decklid");
        spots(SECOND, "fender-left", "quarter-right", "door-front-left");
        isPublished(analyses().horizontal().orElseThrow());
    }

    @Test
    void levelAndUprightNeedTwoSpotsEach() {
        visit.reading("hood", "100").reading("fender-left", "110").reading("fender-left", "120");
        assertThat(analyses().horizontal()).isEmpty();
        visit.reading("roof", "104");
        assertThat(analyses().horizontal().orElseThrow().difference()).isCloseTo(102 - 115, within(1e-9));
    }

    /** Two panels that meet are neighbors of each other, however they are listed; the sides of the car never mix. */
    @Test
    void meetingGoesBothWays() {
        for (String zone : List.of("hood", "fender-left", "cowl", "quarter-right", "sail-panel-right", "tail-panel")) {
            assertThat(PanelAnalyses.meeting(zone)).as(zone).isNotEmpty().doesNotContain(zone);
            for (String other : PanelAnalyses.meeting(zone)) {
                assertThat(PanelAnalyses.meeting(other))
                        .as("%s meets %s", other, zone)
                        .contains(zone);
                assertThat(zone.endsWith("-left") && other.endsWith("-right")).isFalse();
            }
        }
        assertThat(PanelAnalyses.meeting("antenna")).isEmpty();
    }

    /** A spot of several readings has its place where any of them was taken; readings elsewhere in another view show no step. */
    @Test
    void aStepIsFoundByThePlacesOfSpots() {
        double[] um = {125, 128, 126, 230, 233, 229};
        for (int n = 0; n < um.length; n++) {
            visit.readingAt("door-front-left", String.valueOf(um[n]), new ViewPoint(View.LEFT, .3 + .05 * n, .5), "");
        }
        assertThat(analyses().steps()).hasSize(1);
        assertThat(analyses().steps().get(0).found().at()).isCloseTo(.425, within(1e-9));
        assertThat(analyses().steps().get(0).found().stepUm())
                .isCloseTo((230 + 233 + 229 - 125 - 128 - 126) / 3.0, within(1e-9));
        visit.readingAt("door-front-left", "130", new ViewPoint(View.TOP, .3, .5), "");
        assertThat(analyses().steps()).isEmpty();
    }
}
