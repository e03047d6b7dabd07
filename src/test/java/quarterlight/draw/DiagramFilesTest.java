package quarterlight.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.EnginePlace;
import quarterlight.draw.DrawnSheet.Drawn;
import quarterlight.table.ZoneTable;

/** What a diagram must hold: the committed files, read as text, measured with a geometry library. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DiagramFilesTest {
    private static final List<String> EXTERIOR = List.of("left", "right", "front", "rear", "top");
    private final ZoneCatalog catalog = ZoneTable.load();
    /** What was worked out of the same paths for another body; bodies of one style differ in few places. */
    private static final Map<List<?>, Double> SHARES = new ConcurrentHashMap<>();

    private static final Map<List<?>, List<String>> OVERLAPS = new ConcurrentHashMap<>();

    static Stream<Body> bodies() {
        return Stream.of(BodyStyle.values()).flatMap(style -> Stream.of(Construction.values())
                .flatMap(construction ->
                        Stream.of(EnginePlace.values()).map(engine -> new Body(style, construction, engine))));
    }

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void theCommittedFileIsWhatTheDrawingDataMake(BodyStyle style) throws IOException {
        DrawDiagrams.Drawn drawn = new DrawDiagrams(DrawnSheet.DIAGRAMS, catalog).draw(style);
        assertThat(drawn.remarks()).isEmpty();
        assertThat(drawn.svg().equals(DrawnSheet.of(style).svg()))
                .as("run DrawDiagrams and commit diagrams/%s.svg", style.word())
                .isTrue();
    }

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void everyViewIsThereAndEveryIdIsUnique(BodyStyle style) {
        List<Drawn> paths = DrawnSheet.of(style).paths();
        assertThat(paths.stream().map(Drawn::view).collect(Collectors.toSet()))
                .isEqualTo(Stream.of(View.values()).map(View::word).collect(Collectors.toSet()));
        List<String> ids = paths.stream()
                .filter(path -> path.kind().equals("zone"))
                .map(path -> path.attributes().get("id"))
                .toList();
        assertThat(ids).doesNotHaveDuplicates().doesNotContainNull();
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void everyZoneOfTheBodyIsDrawnAndNoOther(Body body) {
        Set<String> wanted = catalog.zonesOf(body).stream()
                .filter(zone -> zone.group() != ZoneGroup.RECORD)
                .map(zone -> zone.id().value())
                .collect(Collectors.toSet());
        Set<String> drawn = DrawnSheet.of(body.style()).zonesOf(body).stream()
                .map(Drawn::zone)
                .collect(Collectors.toSet());
        assertThat(drawn).isEqualTo(wanted);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void noZoneStandsTwiceInAView(Body body) {
        List<String> places = DrawnSheet.of(body.style()).zonesOf(body).stream()
                .map(path -> path.view() + " " + path.zone())
                .toList();
        assertThat(places).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void everyZoneIsOneSimplePolygon(BodyStyle style) {
        for (Drawn path : DrawnSheet.of(style).paths()) {
            if (path.kind().equals("zone")) {
                assertThat(path.rings()).as(path.attributes().get("id")).hasSize(1);
                assertThat(path.rings().get(0).isValid())
                        .as(path.attributes().get("id"))
                        .isTrue();
                assertThat(path.rings().get(0).getArea())
                        .as(path.attributes().get("id"))
                        .isGreaterThan(500);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void finishZonesOfAnExteriorViewDoNotOverlap(Body body) {
        DrawnSheet sheet = DrawnSheet.of(body.style());
        for (String view : EXTERIOR) {
            List<Drawn> zones = sheet.zonesOf(body).stream()
                    .filter(path -> path.view().equals(view)
                            && catalog.get(new ZoneId(path.zone())).finish())
                    .toList();
            assertThat(OVERLAPS.computeIfAbsent(sheet.key(zones), key -> overlaps(zones)))
                    .as("%s %s", body, view)
                    .isEmpty();
        }
    }

    private static List<String> overlaps(List<Drawn> zones) {
        List<Geometry> areas = zones.stream().map(Drawn::area).toList();
        List<String> overlaps = new ArrayList<>();
        for (int i = 0; i < zones.size(); i++) {
            for (int k = 0; k < i; k++) {
                Geometry a = areas.get(i);
                Geometry b = areas.get(k);
                if (!a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())) {
                    continue;
                }
                double common = a.intersection(b).getArea() / Math.min(a.getArea(), b.getArea());
                if (common > 0.005) {
                    overlaps.add(zones.get(i).zone() + " " + zones.get(k).zone() + " " + common);
                }
            }
        }
        return overlaps;
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void exteriorViewsAreCoveredByZonesAndWheels(Body body) {
        DrawnSheet sheet = DrawnSheet.of(body.style());
        for (String view : EXTERIOR) {
            List<Drawn> paths = sheet.paths().stream()
                    .filter(path -> path.view().equals(view) && path.belongsTo(body))
                    .toList();
            assertThat(SHARES.computeIfAbsent(sheet.key(paths), key -> share(paths)))
                    .as("%s %s", body, view)
                    .isBetween(0.97, 1.0 + 1e-9);
        }
    }

    private static double share(List<Drawn> paths) {
        List<Geometry> covering = new ArrayList<>();
        List<Geometry> outline = new ArrayList<>();
        for (Drawn path : paths) {
            if (path.kind().equals("silhouette")) {
                outline.add(path.area());
            } else if (List.of("zone", "wheel", "glass", "shade").contains(path.kind())) {
                covering.add(path.area());
            }
        }
        Geometry silhouette = UnaryUnionOp.union(outline);
        return UnaryUnionOp.union(covering).intersection(silhouette).getArea() / silhouette.getArea();
    }

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void mirrorZonesHaveEqualAreas(BodyStyle style) {
        Map<String, Double> areas = new HashMap<>();
        Set<String> seen = new HashSet<>();
        for (Drawn path : DrawnSheet.of(style).paths()) {
            if (path.kind().equals("zone")) {
                areas.put(path.attributes().get("id"), path.area().getArea());
            }
        }
        for (Map.Entry<String, Double> each : areas.entrySet()) {
            String id = each.getKey();
            String view = id.substring(0, id.indexOf('-'));
            String zone = id.substring(id.indexOf('-') + 1);
            String twinView = view.equals("left") ? "right" : view;
            String twin = twinView + "-" + zone.replaceFirst("-left(?=$|-)", "-right");
            if (!id.equals(twin) && !view.equals("right") && (view.equals("left") || zone.contains("-left"))) {
                assertThat(areas).containsKey(twin);
                assertThat(areas.get(twin) / each.getValue()).as(id).isBetween(0.999, 1.001);
                seen.add(id);
            }
        }
        for (Zone zone : catalog.all()) {
            if (zone.styles().contains(style)
                    && zone.mirror().isPresent()
                    && zone.id().value().contains("left")) {
                assertThat(seen.stream().anyMatch(id -> id.contains("-" + zone.id())))
                        .as("%s has a twin that was compared", zone.id())
                        .isTrue();
            }
        }
    }
}
