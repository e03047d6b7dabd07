package quarterlight.diagram.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;

/** The name of a chosen zone stands off the values round it. */
class PlatePlacementTest {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId ROOF = new ZoneId("roof");
    private static final Rectangle2D SHEET = box(0, 0, 400, 400);
    /** In the middle of the sheet. */
    private static final Rectangle2D OUTLINE = box(180, 190, 40, 20);

    private static final double WIDTH = 60;
    private static final double HEIGHT = 18;

    private static Rectangle2D box(double x, double y, double width, double height) {
        return new Rectangle2D.Double(x, y, width, height);
    }

    private static PlatePlacement.Wish wish(ZoneId zone, Rectangle2D... outlines) {
        return new PlatePlacement.Wish(zone, List.of(outlines), WIDTH, HEIGHT);
    }

    private static Rectangle2D hood(List<Rectangle2D> taken, Rectangle2D... outlines) {
        return PlatePlacement.place(List.of(wish(HOOD, outlines)), taken, SHEET).get(HOOD);
    }

    @Test
    void aPlateStandsAboveItsZoneWhereThatIsFree() {
        assertThat(hood(List.of(), OUTLINE)).isEqualTo(box(170, 168, WIDTH, HEIGHT));
    }

    @Test
    void aPlateLeavesTheValuesOpen() {
        Rectangle2D above = box(195, 172, 20, 11);
        assertThat(hood(List.of(above), OUTLINE)).as("below").isEqualTo(box(170, 214, WIDTH, HEIGHT));
        Rectangle2D aboveAll = box(0, 100, 400, 88);
        Rectangle2D belowAll = box(0, 212, 400, 100);
        assertThat(hood(List.of(aboveAll, belowAll), OUTLINE)).as("beside").isEqualTo(box(224, 191, WIDTH, HEIGHT));
        assertThat(hood(List.of(box(100, 100, 200, 200)), OUTLINE, box(20, 300, 10, 10)))
                .as("at the smaller outline")
                .isEqualTo(box(2, 278, WIDTH, HEIGHT));
    }

    @Test
    void aPlateStandsAboveAllTheSameWhereNothingNearIsFree() {
        assertThat(hood(List.of(SHEET), OUTLINE)).isEqualTo(box(170, 168, WIDTH, HEIGHT));
    }

    @Test
    void aPlateStaysOnTheSheet() {
        assertThat(hood(List.of(), box(0, 0, 40, 20))).as("no room above").isEqualTo(box(2, 24, WIDTH, HEIGHT));
        assertThat(hood(List.of(), box(380, 300, 20, 20))).as("at the right").isEqualTo(box(338, 278, WIDTH, HEIGHT));
    }

    @Test
    void twoPlatesDoNotOverlap() {
        Map<ZoneId, Rectangle2D> both =
                PlatePlacement.place(List.of(wish(HOOD, OUTLINE), wish(ROOF, box(190, 190, 30, 18))), List.of(), SHEET);
        assertThat(both).containsOnlyKeys(HOOD, ROOF);
        assertThat(both.get(HOOD).intersects(both.get(ROOF))).isFalse();
    }
}
