package quarterlight.compare.hour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.car.body.BodyStyle;
import quarterlight.compare.TestCar;
import quarterlight.compare.matter.Care;
import quarterlight.visit.trial.TrialResult;

/** What one hour more at a car is best spent on: from what others show, from what the visit lacks, and from the finish model. */
class OneHourTest {
    private static List<HourLook> at(int car, TestCar... cars) {
        return TestCar.sheet(Care.NONE, cars).hours().get(car);
    }

    private static TestCar measured() {
        TestCar car = TestCar.of(BodyStyle.COUPE).checked(100, 101);
        for (String zone : List.of("roof", "decklid", "door-front-left", "door-front-right")) {
            car.measured(zone, 108, 112, 115);
        }
        return car;
    }

    @Test
    void whatWasFoundOnTheOtherIsToBeLookedForHereWithItsSeverityAndItsCaution() {
        assertThat(at(1, TestCar.rottenTruck(), TestCar.cleanCoupe())).anySatisfy(look -> {
            assertThat(look.what()).startsWith("Look for rust: ").contains("rail");
            assertThat(look.why()).contains("(A)", "grave", "Rail rotted through");
            assertThat(look.caution()).isPresent();
        });
    }

    @Test
    void whatFailedOnTheOtherIsToBeTriedHereUnlessItWas() {
        TestCar fails = TestCar.of(BodyStyle.COUPE).tried("Steering lock to lock", TrialResult.DOES_NOT);
        assertThat(at(1, fails, TestCar.of(BodyStyle.COUPE)))
                .anySatisfy(look -> assertThat(look.what()).contains("Steering lock to lock"));
        assertThat(at(1, fails, TestCar.of(BodyStyle.COUPE).tried("Steering lock to lock", TrialResult.WORKS)))
                .noneSatisfy(look -> assertThat(look.what()).contains("Steering lock to lock"));
    }

    @Test
    void theModelNamesThePanelOfWhichItExpectsMostThatOfTheOthersMattersFirst() {
        TestCar thick = measured().measured("fender-left", 900, 950, 1000, 980);
        assertThat(at(1, thick, measured())).anySatisfy(look -> {
            assertThat(look.what()).startsWith("Measure ").contains("fender, left");
            assertThat(look.why()).contains("the finish model expects most");
        });
    }

    @Test
    void aCarOfWhichNothingIsKnownGetsNoMoreThanAnHourHoldsAndWhatCarriesTheCarFirst() {
        List<HourLook> looks = at(1, TestCar.rottenTruck(), TestCar.of(BodyStyle.WAGON));
        assertThat(looks).hasSizeBetween(3, 7).doesNotHaveDuplicates();
        assertThat(looks.get(0).what()).as("%s", looks).contains("carries");
    }
}
