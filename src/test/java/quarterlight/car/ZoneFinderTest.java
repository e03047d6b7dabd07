package quarterlight.car;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.DriveSide;
import quarterlight.table.ZoneTable;

class ZoneFinderTest {
    private static final List<Zone> COUPE = ZoneTable.load().zonesOf(Body.usual(BodyStyle.COUPE));
    private static final List<Zone> SEDAN = ZoneTable.load().zonesOf(Body.usual(BodyStyle.SEDAN));

    @ParameterizedTest(name = "{0} ({1}-hand drive) finds {2} first")
    @CsvSource({
        "df l, left, door-front-left",
        "dfl, left, door-front-left",
        "fdl, left, door-front-left",
        "driver door, left, door-front-left",
        "driver door, right, door-front-right",
        "passenger door, left, door-front-right",
        "pass door, right, door-front-left",
        "door driver, left, door-front-left",
        "DRIVER  Door, left, door-front-left",
        "rocker r, left, rocker-right",
        "sill l, left, rocker-left",
        "hood, left, hood",
        "ho, left, hood",
        "wfl, left, wheel-front-left",
        "tire rear right, left, wheel-rear-right",
        "jamb l, left, door-jamb-front-left",
        "quarter-left, left, quarter-left",
        "trunk fl, left, trunk-floor",
        "vin, left, vinyl-roof",
        "driver seat, right, seat-front-right",
        "bonnet, left, hood",
        "wing l, left, fender-left",
        "front wing, left, fender-left",
        "boot, left, decklid",
        "boot floor, left, trunk-floor",
        "windscreen, left, windshield",
        "headlight r, left, headlamp-right",
        "tyre fl, left, wheel-front-left",
        "quarter l, left, quarter-left",
        "bulkhead, left, firewall",
        "hodo, left, hood",
        "fendr l, left, fender-left",
        "rokcer r, left, rocker-right",
        "windsheild, left, windshield",
    })
    void theBestComesFirst(String typed, String drive, String zone) {
        List<Zone> found =
                ZoneFinder.matches(typed, DriveSide.valueOf(drive.toUpperCase(java.util.Locale.ROOT)), COUPE);

        assertThat(found).as("%s", found).isNotEmpty();
        assertThat(found.get(0).id()).isEqualTo(new ZoneId(zone));
    }

    @Test
    void everyIdAndEveryLabelFindsItsZoneFirst() {
        for (Zone zone : SEDAN) {
            assertThat(ZoneFinder.matches(zone.id().value(), DriveSide.LEFT, SEDAN)
                            .get(0))
                    .isEqualTo(zone);
            assertThat(ZoneFinder.matches(zone.label(), DriveSide.LEFT, SEDAN).get(0))
                    .isEqualTo(zone);
        }
    }

    @Test
    void driverNamesOneSideOnly() {
        assertThat(ZoneFinder.matches("driver", DriveSide.RIGHT, SEDAN))
                .isNotEmpty()
                .allMatch(zone -> zone.side().orElseThrow() == DriveSide.RIGHT);
    }

    @Test
    void nothingTypedFindsNothingAndWhatNoZoneHasFindsNothing() {
        assertThat(ZoneFinder.matches("", DriveSide.LEFT, COUPE)).isEmpty();
        assertThat(ZoneFinder.matches(" - ", DriveSide.LEFT, COUPE)).isEmpty();
        assertThat(ZoneFinder.matches("propeller", DriveSide.LEFT, COUPE)).isEmpty();
        assertThat(ZoneFinder.matches("wood", DriveSide.LEFT, COUPE))
                .as("a slip in the first letter is another word")
                .noneMatch(zone -> zone.id().value().equals("hood"));
        assertThat(ZoneFinder.matches("hood hood", DriveSide.LEFT, COUPE)).isEmpty();
        assertThat(ZoneFinder.matches("left right", DriveSide.LEFT, COUPE)).isEmpty();
    }

    @Test
    void everyZoneThatSuitsIsFoundAndNoOther() {
        assertThat(ZoneFinder.matches("door", DriveSide.LEFT, SEDAN))
                .extracting(zone -> zone.id().value())
                .containsExactlyInAnyOrderElementsOf(SEDAN.stream()
                        .map(zone -> zone.id().value())
                        .filter(id -> id.startsWith("door-"))
                        .toList())
                .startsWith("door-front-left", "door-front-right", "door-rear-left", "door-rear-right");
    }

    @Test
    void ofTwoThatSuitEquallyTheLikelierGoesFirst() {
        ZoneFinder finder = new ZoneFinder(COUPE, DriveSide.LEFT);
        ZoneId right = new ZoneId("door-front-right");

        assertThat(finder.matches("door").get(0).id()).isEqualTo(new ZoneId("door-front-left"));
        assertThat(finder.matches("door", zone -> zone.equals(right) ? 0.4 : 0.1)
                        .get(0)
                        .id())
                .isEqualTo(right);
    }
}
