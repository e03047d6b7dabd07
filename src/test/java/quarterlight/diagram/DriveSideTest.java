package quarterlight.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.DriveSide;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;

/** A driver on the right has wheel, pedals and brake cylinder on the right; everything else stays where it was. */
class DriveSideTest {
    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void whatIsTheDriversIsMirroredAndNothingElse(BodyStyle style) throws DiagramRefused {
        DiagramFile file = DiagramFile.shipped(style);
        Body body = Body.usual(style);
        BodyDiagram left = file.of(body, DriveSide.LEFT);
        BodyDiagram right = file.of(body, DriveSide.RIGHT);
        Set<String> moved = new HashSet<>();
        for (ViewDrawing view : left.views()) {
            ViewDrawing other = right.view(view.view()).orElseThrow();
            assertThat(other.shapes()).hasSameSizeAs(view.shapes());
            for (int i = 0; i < view.shapes().size(); i++) {
                DiagramShape a = view.shapes().get(i);
                DiagramShape b = other.shapes().get(i);
                assertThat(b.zone()).isEqualTo(a.zone());
                Rectangle2D was = a.outline().bounds();
                Rectangle2D is = b.outline().bounds();
                if (a.driver()) {
                    a.zone().ifPresent(zone -> moved.add(view.view().word() + " " + zone));
                    boolean across = view.view() == View.BAY;
                    double sum = across
                            ? was.getMinX() + is.getMaxX() - view.widthMm()
                            : was.getMinY() + is.getMaxY() - view.heightMm();
                    assertThat(sum).isCloseTo(0, within(1e-6));
                    assertThat(b.outline().area()).isCloseTo(a.outline().area(), within(1e-3));
                } else {
                    assertThat(is).isEqualTo(was);
                }
            }
        }
        assertThat(moved).containsExactlyInAnyOrder("cabin steering-column", "cabin pedals", "bay steering-brake-bay");
    }

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void theWheelStandsBeforeTheSeatOfTheDriver(BodyStyle style) throws DiagramRefused {
        for (DriveSide side : DriveSide.values()) {
            ViewDrawing cabin = DiagramFile.shipped(style)
                    .of(Body.usual(style), side)
                    .view(View.CABIN)
                    .orElseThrow();
            double wheel = middle(cabin, "steering-column");
            double seat = middle(cabin, "seat-front-" + side.word());
            assertThat(wheel).as("%s %s", style, side).isCloseTo(seat, within(120.0));
            assertThat(middle(cabin, "pedals")).isCloseTo(seat, within(120.0));
        }
    }

    private static double middle(ViewDrawing view, String zone) {
        List<DiagramShape> outlines = view.outlinesOf(new ZoneId(zone));
        assertThat(outlines).hasSize(1);
        return outlines.get(0).outline().bounds().getCenterY();
    }
}
