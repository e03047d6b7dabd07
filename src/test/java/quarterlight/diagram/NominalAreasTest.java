package quarterlight.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.units.Area;

class NominalAreasTest {
    private static final String TABLE =
            """
            # a comment
            zone,style,view,factor,area_mm2,source
            roof,*,top,1.1,,a
            roof,coupe,top,1.05,,a
            trunk-floor,*,,,900000,estimate
            door-front-left,*,left,1.2,,a
            """;

    private static Map<ZoneId, Area> areas(BodyStyle style, Dimensions dimensions) throws Exception {
        return NominalAreas.read(new StringReader(TABLE)).areas(PlainDiagram.of(Body.usual(style)), dimensions);
    }

    private static double drawn(BodyStyle style, int view, String zone) {
        return PlainDiagram.of(Body.usual(style))
                .views()
                .get(view)
                .outlinesOf(new ZoneId(zone))
                .get(0)
                .outline()
                .area();
    }

    @Test
    void anAreaIsTheOutlinesAreaTimesTheFactorOrTheEstimate() throws Exception {
        Map<ZoneId, Area> areas = areas(BodyStyle.COUPE, Dimensions.NOT_GIVEN);
        assertThat(areas.get(new ZoneId("roof")).mm2())
                .isCloseTo(1.05 * drawn(BodyStyle.COUPE, 4, "roof"), within(1e-6));
        assertThat(areas.get(new ZoneId("trunk-floor")).mm2()).isCloseTo(900_000, within(1e-6));
        assertThat(areas).doesNotContainKey(new ZoneId("hood"));
        assertThat(areas(BodyStyle.SEDAN, Dimensions.NOT_GIVEN)
                        .get(new ZoneId("roof"))
                        .mm2())
                .isCloseTo(1.1 * drawn(BodyStyle.SEDAN, 4, "roof"), within(1e-6));
    }

    @Test
    void theCarsOwnDimensionsScaleTheAreas() throws Exception {
        // 10 % longer and 20 % higher than the style's 4690 and 1330 mm
        Dimensions own =
                new Dimensions(OptionalInt.empty(), OptionalInt.of(5159), OptionalInt.empty(), OptionalInt.of(1596));
        Map<ZoneId, Area> usual = areas(BodyStyle.COUPE, Dimensions.NOT_GIVEN);
        Map<ZoneId, Area> large = areas(BodyStyle.COUPE, own);
        assertThat(ratio(large, usual, "door-front-left")).isCloseTo(1.1 * 1.2, within(1e-9));
        assertThat(ratio(large, usual, "roof")).isCloseTo(1.1, within(1e-9));
        assertThat(ratio(large, usual, "trunk-floor")).isEqualTo(1);
        Dimensions wheelbase =
                new Dimensions(OptionalInt.of(3014), OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());
        assertThat(ratio(areas(BodyStyle.COUPE, wheelbase), usual, "roof")).isCloseTo(1.1, within(1e-9));
    }

    private static double ratio(Map<ZoneId, Area> a, Map<ZoneId, Area> b, String zone) {
        return a.get(new ZoneId(zone)).mm2() / b.get(new ZoneId(zone)).mm2();
    }

    @Test
    void aRuleWithBothOrNeitherIsRefused() {
        assertThatThrownBy(() -> NominalAreas.read(
                        new StringReader("zone,style,view,factor,area_mm2,source\nroof,*,top,1,5,a\n")))
                .hasMessageContaining("a view or an area");
    }
}
