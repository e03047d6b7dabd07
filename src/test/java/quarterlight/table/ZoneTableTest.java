package quarterlight.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.EnginePlace;

class ZoneTableTest {
    private final ZoneCatalog catalog = ZoneTable.load();

    private List<String> idsOf(Body body) {
        return catalog.zonesOf(body).stream().map(z -> z.id().value()).toList();
    }

    @Test
    void aUnibodyCoupeHasRailsAndNoFrame() {
        assertThat(idsOf(Body.usual(BodyStyle.COUPE)))
                .contains("quarter-left", "frame-rail-front-left", "decklid", "roof")
                .doesNotContain("frame-side-rail-left", "door-rear-left", "tailgate", "engine-lid");
    }

    @Test
    void aPickupUsuallyStandsOnAFrame() {
        assertThat(Body.usual(BodyStyle.PICKUP).construction()).isEqualTo(Construction.BODY_ON_FRAME);
        assertThat(idsOf(Body.usual(BodyStyle.PICKUP))).contains("frame-side-rail-left", "bed-side-left");
    }

    @Test
    void anEngineInTheRearChangesTheLids() {
        Body rear = new Body(BodyStyle.COUPE, Construction.UNIBODY, EnginePlace.REAR);
        assertThat(idsOf(rear)).contains("front-lid", "engine-lid").doesNotContain("hood", "decklid", "driveshaft");
    }

    @Test
    void aMirrorZoneLiesOnTheOtherSideAndIsOtherwiseAlike() {
        for (Zone zone : catalog.all()) {
            zone.mirror().map(catalog::get).ifPresent(mirror -> {
                assertThat(mirror.side()).isPresent().isNotEqualTo(zone.side());
                assertThat(mirror.structural()).isEqualTo(zone.structural());
                assertThat(mirror.styles()).isEqualTo(zone.styles());
            });
        }
    }
}
