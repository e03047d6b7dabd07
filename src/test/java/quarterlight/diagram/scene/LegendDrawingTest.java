package quarterlight.diagram.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.SceneColors;
import quarterlight.diagram.ink.TextMeasure;

/** The legend stays within its band at every width of the drawing; where ranges find no room, limits stand between the steps. */
class LegendDrawingTest {
    private static final Legend LONG = new Legend(
            Optional.of(new Legend.Steps(
                    "Mittlere Lackschichtdicke, mil. Ungefärbt mit Zahl: in der eigenen Dicke dieses Fahrzeugs und im"
                            + " Werksbereich seines Lacks",
                    "mil",
                    List.of("3,0", "4,0", "6,5", "8,3", "13,0", "26,0"),
                    List.of(
                            "unter 3,0",
                            "3,0 bis 4,0",
                            "4,0 bis 6,5",
                            "6,5 bis 8,3",
                            "8,3 bis 13,0",
                            "13,0 bis 26,0",
                            "über 26,0"))),
            List.of(new Legend.Key(
                    "Rost", List.of(new Legend.Swatch(Legend.Sample.STIPPLE, 5, "am meisten, 3 bis 0")))));

    @ParameterizedTest
    @CsvSource({"260, false", "340, false", "420, false", "600, true", "900, true"})
    void nothingLeavesTheBand(double width, boolean ranges) {
        TextMeasure measure = TextMeasure.bundled();
        Rectangle2D band = new Rectangle2D.Double(20, 0, width, LegendDrawing.height(LONG, width, measure));
        List<DrawnItem> drawn = LegendDrawing.draw(LONG, band, new SceneColors(InkPalette.LIGHT, Ramp.load()), measure);
        List<DrawnItem.Words> words = drawn.stream()
                .filter(DrawnItem.Words.class::isInstance)
                .map(DrawnItem.Words.class::cast)
                .toList();
        assertThat(words).allSatisfy(word -> {
            assertThat(word.left()).as(word.text()).isGreaterThanOrEqualTo(band.getX());
            assertThat(word.left() + word.width()).as(word.text()).isLessThanOrEqualTo(band.getMaxX() + 0.5);
            assertThat(word.baseline()).as(word.text()).isLessThan(band.getMaxY());
        });
        assertThat(words).extracting(DrawnItem.Words::text).contains(ranges ? "13,0 bis 26,0" : "26,0");
        assertThat(words).extracting(DrawnItem.Words::text).doesNotContain(ranges ? "26,0" : "13,0 bis 26,0");
    }
}
