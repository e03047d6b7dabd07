package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.table.ZoneTable;

/** Zones of a kind, as docs/methods/zone-suggestion.md tells: the same part elsewhere four times as likely as another of its group. */
class ZoneKinTest {
    private static final ZoneCatalog CATALOG = ZoneTable.load();
    private final ZoneKin kin = ZoneKin.of(CATALOG.zonesOf(Body.usual(BodyStyle.SEDAN)));

    private Map<ZoneId, Double> kin(String zone) {
        return kin.kinds().get(new ZoneId(zone));
    }

    @Test
    void theSamePartElsewhereIsFourTimesAsLikelyAsAnotherOfItsGroup() {
        assertThat(kin("wheel-front-left"))
                .containsEntry(new ZoneId("wheel-rear-right"), 4.0)
                .containsEntry(new ZoneId("wheel-front-right"), 4.0)
                .doesNotContainKey(new ZoneId("wheel-front-left"))
                .doesNotContainKey(new ZoneId("hood"));
        assertThat(kin("hood")).containsEntry(new ZoneId("roof"), 1.0).doesNotContainKey(new ZoneId("engine"));
    }

    /** Of four wheels in turn the opposite one is two away and counts 1 / sqrt(e) of its neighbor on either side; the spare wheel, not in the turn, as before. */
    @Test
    void whoTakesAKindInTurnComesToTheNextOfIt() {
        List<ZoneId> order = Stream.of(
                        "wheel-front-left", "hood", "wheel-rear-left", "wheel-rear-right", "wheel-front-right")
                .map(ZoneId::new)
                .toList();
        Map<ZoneId, Double> turn = kin.inTurn(order).kinds().get(new ZoneId("wheel-front-left"));
        assertThat(turn)
                .containsEntry(new ZoneId("wheel-rear-left"), 4.0)
                .containsEntry(new ZoneId("wheel-front-right"), 4.0)
                .containsEntry(new ZoneId("wheel-rear-right"), 4 * Math.exp(-0.5))
                .containsEntry(
                        new ZoneId("spare-wheel"), kin("wheel-front-left").get(new ZoneId("spare-wheel")));
        assertThat(kin.inTurn(order).mirrors()).isEqualTo(kin.mirrors());
        assertThat(kin.inTurn(List.of()).kinds()).isEqualTo(kin.kinds());
    }

    @Test
    void mirrorsAreThoseOfTheZoneTable() {
        assertThat(kin.mirrors())
                .containsEntry(new ZoneId("fender-left"), new ZoneId("fender-right"))
                .containsEntry(new ZoneId("fender-right"), new ZoneId("fender-left"))
                .doesNotContainKey(new ZoneId("hood"));
    }

    /** Four words that tell places apart leave nothing of "wheel"; a word that is none keeps parts apart. */
    @Test
    void partsAreToldApartByWhatIsLeftWithoutTheirPlace() {
        List<ZoneId> ofDoor = kin("door-front-left").entrySet().stream()
                .filter(one -> one.getValue() == 4)
                .map(Map.Entry::getKey)
                .toList();
        assertThat(ofDoor)
                .containsExactlyInAnyOrder(
                        new ZoneId("door-front-right"), new ZoneId("door-rear-left"), new ZoneId("door-rear-right"));
    }
}
