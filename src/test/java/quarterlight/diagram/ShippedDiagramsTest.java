package quarterlight.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.diagram.file.DiagramCheck;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramFinding;
import quarterlight.table.ZoneTable;
import quarterlight.units.Area;
import quarterlight.visit.pin.ViewPoint;

/** The five diagrams that the program carries, in every variant. */
class ShippedDiagramsTest {
    private final ZoneCatalog catalog = ZoneTable.load();

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void theDiagramPassesTheChecksThatAnOwnOneMustPass(BodyStyle style) throws Exception {
        assertThat(DiagramCheck.check(DiagramFile.shipped(style), catalog))
                .extracting(DiagramFinding::text)
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void everyZoneCanBeReachedFromEveryOther(BodyStyle style) throws Exception {
        for (Body body : DiagramCheck.variants(style)) {
            BodyDiagram diagram = DiagramFile.shipped(body);
            Neighbors neighbors = Neighbors.of(diagram);
            assertThat(neighbors.islands()).as("%s", body).hasSize(1);
            List<ZoneId> wanted = catalog.zonesOf(body).stream()
                    .filter(zone -> zone.group() != ZoneGroup.RECORD)
                    .map(Zone::id)
                    .toList();
            assertThat(neighbors.map().keySet()).as("%s", body).containsAll(wanted);
        }
        Neighbors usual = Neighbors.of(DiagramFile.shipped(Body.usual(style)));
        assertThat(usual.of(new ZoneId("door-front-left")))
                .contains(new ZoneId("fender-left"), new ZoneId("rocker-left"));
        assertThat(usual.of(new ZoneId("door-front-left"))).doesNotContain(new ZoneId("door-front-right"));
        assertThat(usual.of(new ZoneId("hood"))).contains(new ZoneId("engine"));
    }

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void nominalAreasAreThoseOfACar(BodyStyle style) throws Exception {
        Body body = Body.usual(style);
        Map<ZoneId, Area> areas = NominalAreas.of(DiagramFile.shipped(body), Dimensions.NOT_GIVEN);
        double outer = 0;
        for (Zone zone : catalog.zonesOf(body)) {
            boolean wanted = List.of(ZoneGroup.OUTER, ZoneGroup.EDGES, ZoneGroup.BAY, ZoneGroup.UNDER, ZoneGroup.LOAD)
                    .contains(zone.group());
            if (wanted) {
                assertThat(areas).containsKey(zone.id());
                assertThat(areas.get(zone.id()).mm2()).as("%s", zone.id()).isBetween(2e3, 5e6);
            }
            if (zone.group() == ZoneGroup.OUTER) {
                outer += areas.get(zone.id()).mm2() / 1e6;
            }
            zone.mirror().filter(other -> wanted).ifPresent(mirror -> {
                double own = areas.get(zone.id()).mm2();
                assertThat(areas.get(mirror).mm2()).as("%s", zone.id()).isCloseTo(own, within(0.001 * own));
            });
        }
        // the outer skin alone; the published 15 to 25 m2 of painted surface count inner surfaces too
        assertThat(outer).isBetween(8.0, 15.0);
    }

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void aPointMadeForAZoneFindsTheZoneAgain(BodyStyle style) throws Exception {
        BodyDiagram diagram = DiagramFile.shipped(Body.usual(style));
        ZonePlaces places = ZonePlaces.of(diagram);
        List<String> lost = new ArrayList<>();
        for (ZoneId zone : diagram.zones()) {
            ViewPoint point = places.pointFor(diagram, zone).orElseThrow();
            ViewDrawing view = diagram.view(point.view()).orElseThrow();
            if (ZoneHits.at(diagram, point).filter(zone::equals).isEmpty()) {
                lost.add(zone + " in " + view.view().word());
            }
        }
        assertThat(lost).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void everyZoneCanBeHitWithAPointerAtWindowSize(BodyStyle style) throws Exception {
        BodyDiagram diagram = DiagramFile.shipped(Body.usual(style));
        ZonePlaces places = ZonePlaces.of(diagram);
        double tolerance = 6 / 0.12;
        List<String> lost = new ArrayList<>();
        for (ZoneId zone : diagram.zones()) {
            boolean hit = false;
            for (View view : diagram.viewsOf(zone)) {
                ZonePlaces.Place place = places.place(view, zone).orElseThrow();
                hit |= ZoneHits.at(diagram.view(view).orElseThrow(), place.xMm(), place.yMm(), tolerance)
                        .filter(zone::equals)
                        .isPresent();
            }
            if (!hit) {
                lost.add(zone.value());
            }
        }
        assertThat(lost).isEmpty();
    }
}
