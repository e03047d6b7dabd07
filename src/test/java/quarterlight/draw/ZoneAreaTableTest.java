package quarterlight.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.draw.DrawnSheet.Drawn;
import quarterlight.table.ZoneTable;

/** The table of nominal areas has a rule for every zone that needs one, and the rule can be followed in the drawing. */
class ZoneAreaTableTest {
    private static final Set<ZoneGroup> MEASURED =
            EnumSet.of(ZoneGroup.OUTER, ZoneGroup.EDGES, ZoneGroup.BAY, ZoneGroup.UNDER, ZoneGroup.LOAD);
    private final ZoneCatalog catalog = ZoneTable.load();

    private record Rule(String zone, String style, String view, String factor, String areaMm2, String source) {
        static List<Rule> all() throws IOException {
            List<String> lines = Files.readAllLines(DrawnSheet.DIAGRAMS.resolve("zone-areas.csv"));
            assertThat(lines.get(0)).isEqualTo("zone,style,view,factor,area_mm2,source");
            return lines.stream()
                    .skip(1)
                    .map(line -> line.split(",", 6))
                    .map(cell -> new Rule(cell[0], cell[1], cell[2], cell[3], cell[4], cell[5]))
                    .toList();
        }
    }

    static Stream<Body> bodies() {
        return DiagramFilesTest.bodies();
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void everyMeasuredZoneHasAnAreaInSquareMillimeters(Body body) throws IOException {
        List<Rule> rules = Rule.all();
        List<Drawn> drawn = DrawnSheet.of(body.style()).zonesOf(body);
        for (Zone zone : catalog.zonesOf(body)) {
            if (MEASURED.contains(zone.group())) {
                Rule rule = rule(rules, zone, body.style()).orElseThrow();
                assertThat(area(rule, drawn)).as("%s of %s", zone.id(), body).isBetween(5_000.0, 5_000_000.0);
            }
        }
    }

    @Test
    void everyRowNamesAZoneAndEitherAViewOrAnArea() throws IOException {
        for (Rule rule : Rule.all()) {
            assertThat(catalog.find(new quarterlight.car.ZoneId(rule.zone())))
                    .as(rule.zone())
                    .isPresent();
            assertThat(rule.areaMm2().isEmpty())
                    .as(rule.zone())
                    .isNotEqualTo(rule.view().isEmpty());
            assertThat(rule.factor().isEmpty())
                    .as(rule.zone())
                    .isEqualTo(rule.view().isEmpty());
            assertThat(rule.source()).as(rule.zone()).isNotBlank();
        }
    }

    @Test
    void theOuterSkinOfACarIsNineToThirteenSquareMeters() throws IOException {
        List<Rule> rules = Rule.all();
        for (BodyStyle style : BodyStyle.values()) {
            Body body = Body.usual(style);
            List<Drawn> drawn = DrawnSheet.of(style).zonesOf(body);
            double sum = catalog.zonesOf(body).stream()
                    .filter(zone -> zone.group() == ZoneGroup.OUTER)
                    .mapToDouble(zone -> area(rule(rules, zone, style).orElseThrow(), drawn))
                    .sum();
            assertThat(sum / 1e6).as(style.word()).isBetween(9.0, 13.0);
        }
    }

    private static Optional<Rule> rule(List<Rule> rules, Zone zone, BodyStyle style) {
        Stream<Rule> own =
                rules.stream().filter(rule -> rule.zone().equals(zone.id().value()));
        List<Rule> fitting = own.filter(
                        rule -> rule.style().equals("*") || rule.style().equals(style.word()))
                .toList();
        return fitting.stream()
                .filter(rule -> rule.style().equals(style.word()))
                .findFirst()
                .or(() -> fitting.stream().findFirst());
    }

    private static double area(Rule rule, List<Drawn> drawn) {
        if (!rule.areaMm2().isEmpty()) {
            return Double.parseDouble(rule.areaMm2());
        }
        return drawn.stream()
                        .filter(path ->
                                path.view().equals(rule.view()) && path.zone().equals(rule.zone()))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(rule.zone() + " is not drawn in view " + rule.view()))
                        .area()
                        .getArea()
                * Double.parseDouble(rule.factor());
    }
}
