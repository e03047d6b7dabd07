package quarterlight.diagram;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.visit.pin.ViewPoint;

class ZoneHitsTest {
    /** A roof of 1000 x 600 mm, a drip rail of 20 mm along its upper edge on top of it, a lamp of 60 mm on it, a door 30 mm below. */
    private static final String SVG =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" data-style=\"coupe\" data-wheelbase-mm=\"2740\""
                    + " data-length-mm=\"4690\" data-width-mm=\"1810\" data-height-mm=\"1330\">"
                    + "<g data-view=\"left\" data-width-mm=\"2000\" data-height-mm=\"1000\">"
                    + zone("roof", 100, 100, 1000, 600)
                    + zone("drip-rail-left", 100, 100, 1000, 20)
                    + zone("tail-lamp-left", 500, 400, 60, 60)
                    + zone("door-front-left", 100, 730, 1000, 200)
                    + "</g></svg>";

    private final BodyDiagram diagram = PlainDiagram.read(SVG).of(Body.usual(BodyStyle.COUPE));
    private final ViewDrawing view = diagram.views().get(0);

    private static String zone(String id, int x, int y, int w, int h) {
        return "<path id=\"left-" + id + "\" class=\"zone\" data-zone=\"" + id + "\" d=\"M" + x + " " + y + "H"
                + (x + w) + "V" + (y + h) + "H" + x + "Z\"/>";
    }

    private String at(double x, double y, double tolerance) {
        return ZoneHits.at(view, x, y, tolerance).map(ZoneId::value).orElse("nothing");
    }

    @Test
    void theTopmostZoneIsHitFirst() {
        assertThat(at(530, 430, 0)).isEqualTo("tail-lamp-left");
        assertThat(at(400, 430, 0)).isEqualTo("roof");
        assertThat(at(400, 110, 0)).isEqualTo("drip-rail-left");
    }

    @Test
    void outsideEveryZoneTheNearestOutlineWithinTheToleranceIsHit() {
        assertThat(at(400, 708, 40)).isEqualTo("roof");
        assertThat(at(400, 722, 40)).isEqualTo("door-front-left");
        assertThat(at(1139, 500, 40)).isEqualTo("roof");
        assertThat(at(1141, 500, 40)).isEqualTo("nothing");
    }

    @Test
    void aThinZoneIsWidenedToTwiceTheTolerance() {
        // at 0.15 px per mm 6 px are 40 mm; the rail's mean width is 19.6 mm, so it reaches 30.2 mm beyond its edges
        assertThat(at(400, 149, 40)).isEqualTo("drip-rail-left");
        assertThat(at(400, 152, 40)).isEqualTo("roof");
        assertThat(at(400, 149, 0)).isEqualTo("roof");
    }

    @Test
    void aRecordedPointFindsItsZone() {
        assertThat(ZoneHits.at(diagram, new ViewPoint(View.LEFT, 0.265, 0.43))).contains(new ZoneId("tail-lamp-left"));
        assertThat(ZoneHits.at(diagram, new ViewPoint(View.LEFT, 0, 0))).isEmpty();
        assertThat(ZoneHits.at(diagram, new ViewPoint(View.TOP, 0.5, 0.5))).isEmpty();
        assertThat(ZoneHits.distance(diagram, new ZoneId("roof"), new ViewPoint(View.LEFT, 0.6, 0.5)))
                .hasValue(100);
        assertThat(ZoneHits.distance(diagram, new ZoneId("roof"), new ViewPoint(View.LEFT, 0.1, 0.5)))
                .hasValue(0);
    }

    @Test
    void aZoneWithoutPointGetsOneInsideWhereNothingLiesOverIt() {
        ZonePlaces places = ZonePlaces.of(diagram);
        ViewPoint point = places.pointFor(diagram, new ZoneId("roof")).orElseThrow();
        assertThat(ZoneHits.at(diagram, point)).contains(new ZoneId("roof"));
        assertThat(places.place(View.LEFT, new ZoneId("drip-rail-left"))
                        .orElseThrow()
                        .radiusMm())
                .as("half its width of 18 mm, to the nearest cell of 5 mm")
                .isBetween(7.0, 11.0);
        assertThat(places.pointFor(diagram, new ZoneId("hood"))).isEqualTo(Optional.empty());
    }

    @Test
    void zonesAreNeighborsWhereTheirOutlinesTouchOrAStepIsWritten() {
        Neighbors neighbors = Neighbors.of(diagram);
        assertThat(neighbors.of(new ZoneId("roof")))
                .containsExactly(new ZoneId("drip-rail-left"), new ZoneId("tail-lamp-left"));
        assertThat(neighbors.of(new ZoneId("door-front-left"))).isEmpty();
        assertThat(neighbors.islands()).hasSize(2);
        Neighbors plain = Neighbors.of(PlainDiagram.of(Body.usual(BodyStyle.COUPE)));
        assertThat(plain.of(new ZoneId("hood"))).contains(new ZoneId("radiator-support"));
        assertThat(plain.of(new ZoneId("wheel-rear-left"))).contains(new ZoneId("frame-rail-rear-left"));
        plain.map()
                .forEach((zone, set) ->
                        set.forEach(other -> assertThat(plain.of(other)).contains(zone)));
    }
}
