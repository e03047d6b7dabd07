package quarterlight.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.View;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.visit.pin.ViewPoint;

/** The scale of a view, against the length of the car that the diagram states. */
class ViewScaleTest {
    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void theLeftViewIsAsLongAsTheCar(BodyStyle style) throws DiagramRefused {
        BodyDiagram diagram = DiagramFile.shipped(Body.usual(style));
        ViewDrawing left = diagram.view(View.LEFT).orElseThrow();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (DiagramShape shape : left.zones()) {
            least = Math.min(least, shape.outline().bounds().getMinX());
            most = Math.max(most, shape.outline().bounds().getMaxX());
        }
        ViewPoint front = new ViewPoint(View.LEFT, least / left.widthMm(), 0.5);
        ViewPoint rear = new ViewPoint(View.LEFT, most / left.widthMm(), 0.5);
        ViewScale scale = new ViewScale(diagram);
        assertThat(scale.mm(front, rear).orElseThrow())
                .isCloseTo(
                        diagram.size().lengthMm(), within(0.02 * diagram.size().lengthMm()));
        assertThat(scale.mm(front, new ViewPoint(View.TOP, 0, 0))).isEmpty();
        assertThat(List.of(scale.mm(front, front).orElseThrow())).containsExactly(0.0);
    }
}
