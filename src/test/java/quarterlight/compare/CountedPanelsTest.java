package quarterlight.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.compare.matter.Care;

class CountedPanelsTest {
    @Test
    void countsAreOverPanelsMeasuredOnBothAndTheOthersAreCounted() {
        Comparison comparison = TestCar.sheet(
                        Care.NONE,
                        TestCar.of(BodyStyle.COUPE)
                                .measured("hood", 120, 125, 118)
                                .measured("decklid", 120, 122)
                                .measured("roof", 119, 121),
                        TestCar.of(BodyStyle.PICKUP).measured("hood", 130, 128).measured("tailgate", 131, 129))
                .pair()
                .comparison();
        assertThat(comparison.counted()).containsExactly(new ZoneId("hood"), new ZoneId("decklid"));
        assertThat(comparison.refinished().orElseThrow().a().distribution().chances())
                .hasSize(3);
        long panels = comparison.zones().stream()
                .filter(zone -> zone.zoneA().filter(Zone::finish).isPresent()
                        || zone.zoneB().filter(Zone::finish).isPresent())
                .count();
        assertThat(comparison.notComparable()).isEqualTo((int) panels - 2);
    }
}
