package quarterlight.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import quarterlight.car.body.BodyStyle;
import quarterlight.table.ZoneTable;

/** The small language of the drawing data. */
class DrawingLanguageTest {
    private static DrawingScript drawn(String... lines) {
        DrawingScript script = new DrawingScript(file -> List.of(lines), ZoneTable.load(), BodyStyle.COUPE);
        script.read("test.draw");
        return script;
    }

    @Test
    void fourPointsOfACircleGiveACircle() {
        List<Coordinate> curve = HobbySpline.closed(List.of(
                new Coordinate(1000, 0), new Coordinate(0, 1000), new Coordinate(-1000, 0), new Coordinate(0, -1000)));
        for (Coordinate point : curve) {
            assertThat(Math.hypot(point.x, point.y)).isCloseTo(1000, within(0.4));
        }
    }

    @Test
    void twoPointsAreJoinedByAStraightLine() {
        List<Coordinate> points = List.of(new Coordinate(0, 0), new Coordinate(30, 40));
        assertThat(HobbySpline.open(points, OptionalDouble.empty(), OptionalDouble.empty()))
                .isEqualTo(points);
    }

    @Test
    void numbersFollowTheRulesOfArithmetic() {
        Map<String, Double> values = Map.of("wb", 2740.0);
        assertThat(Arithmetic.value("-10+2*(wb-740)/4-3", values, Map.of())).isEqualTo(987);
        assertThat(Arithmetic.value("cos(60)", values, Map.of())).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void twoZonesCutFromOneSilhouetteShareTheirBorder() {
        DrawingScript script = drawn(
                "view left 0,0 1000,500 flip-y : Left side",
                "silhouette box(0,0,1000,500)",
                "curve gap = 400,-10! 430,200 410,600!",
                "cut fender-left = before(gap)",
                "cut quarter-left = rest");
        ViewDrawing view = script.views().get(0);
        double sum = view.pieces().stream()
                .mapToDouble(piece -> piece.shape().getArea())
                .sum();
        assertThat(sum).isCloseTo(500_000, within(1e-6));
        assertThat(view.pieces().get(0).shape().touches(view.pieces().get(1).shape()))
                .isTrue();
    }

    @Test
    void aLeftZoneOfAViewWithAMiddleLineBringsItsRightTwin() {
        DrawingScript script = drawn(
                "view top 0,-500 1000,500 lateral-y : Top",
                "silhouette box(0,-500,1000,500)",
                "cut fender-left = box(0,300,400,500)");
        List<Piece> pieces = script.views().get(0).pieces();
        assertThat(pieces.stream().map(piece -> piece.zone().orElseThrow()))
                .containsExactly("fender-left", "fender-right");
        assertThat(pieces.get(1).shape().getEnvelopeInternal().getMaxY()).isEqualTo(-300);
    }

    @Test
    void aFaultNamesFileLineAndReason() {
        assertThatThrownBy(() -> drawn("let a = 1", "let b = a+c"))
                .isInstanceOf(DrawingFault.class)
                .hasMessage("test.draw:2: there is no value named c");
        assertThatThrownBy(() -> drawn("cut nothing-such = rest"))
                .hasMessageContaining("test.draw:1: there is no zone");
    }
}
