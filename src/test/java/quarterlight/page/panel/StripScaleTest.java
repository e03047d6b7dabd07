package quarterlight.page.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.panel.StripScale.Mark;
import quarterlight.page.panel.StripScale.MarkKind;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.thickness.VisitBuilder;
import quarterlight.thickness.ZoneThickness;
import quarterlight.units.ThicknessUnit;

class StripScaleTest {
    /** From 25 to 400 um in four doublings, over 160 px between 30 and 190. */
    private static final StripScale SCALE = new StripScale(new ThicknessRamp(ThicknessUnit.UM, 25, 4), 0, 220, 30);

    private static Findings findings(VisitBuilder visit) throws Exception {
        return Findings.of(visit.build(), ZoneTable.load(), Map.of(), DatePatternTable.load());
    }

    private static ZoneThickness hood(Findings car) {
        return car.thickness().zone(new ZoneId("hood")).orElseThrow();
    }

    @Test
    void everyDoublingIsAsWide() {
        assertThat(SCALE.ticks()).containsExactly(25.0, 50.0, 100.0, 200.0, 400.0);
        assertThat(SCALE.ticks()).extracting(SCALE::label).containsExactly("25", "50", "100", "200", "400");
        StripScale thin = new StripScale(new ThicknessRamp(ThicknessUnit.MIL, 0.5, 2), 0, 220, 30);
        assertThat(thin.ticks()).extracting(thin::label).containsExactly("0.5", "1.0", "2.0");
        assertThat(thin.tick(1)).as("1 mil is 25.4 um").isEqualTo(thin.x(25.4)).isCloseTo(110, within(1e-9));
        assertThat(SCALE.ticks()).extracting(SCALE::tick).containsExactly(30.0, 70.0, 110.0, 150.0, 190.0);
        assertThat(SCALE.x(100 * Math.sqrt(2))).isCloseTo(130, within(1e-9));
        assertThat(SCALE.x(0)).as("no thickness at all").isEqualTo(30);
        assertThat(SCALE.x(5_000)).as("thicker than the scale").isEqualTo(190);
    }

    @Test
    void whatIsNoValueStandsAtTheEndsOneBesideTheOther() throws Exception {
        Findings car = findings(new VisitBuilder()
                .reading("hood", "none")
                .reading("hood", "none")
                .reading("hood", "over")
                .reading("hood", "over"));
        List<Rectangle2D> boxes = SCALE.marks(hood(car), 50).stream()
                .map(mark -> mark.shape().getBounds2D())
                .toList();
        assertThat(SCALE.marks(hood(car), 50))
                .extracting(Mark::kind)
                .containsExactly(MarkKind.NO_METAL, MarkKind.NO_METAL, MarkKind.BEYOND_RANGE, MarkKind.BEYOND_RANGE);
        assertThat(boxes.get(0).getMaxX()).isLessThan(boxes.get(1).getMinX()).isLessThan(30);
        assertThat(boxes.get(3).getMaxX()).isLessThan(boxes.get(2).getMaxX());
        assertThat(boxes.get(3).getMinX()).isGreaterThan(190);
        assertThat(boxes.get(2).getMaxX()).isLessThan(220);
        assertThat(boxes).extracting(Rectangle2D::getCenterY).containsOnly(50.0);
    }

    @Test
    void valuesAreCirclesAndWhatStandsApartIsCrossed() throws Exception {
        VisitBuilder visit = new VisitBuilder();
        for (String value : List.of("100", "102", "98", "101", "99", "400")) {
            visit.reading("hood", value);
        }
        Findings car = findings(visit);
        List<Mark> marks = SCALE.marks(hood(car), 50);
        assertThat(marks)
                .extracting(Mark::kind)
                .containsExactly(
                        MarkKind.INTERVAL,
                        MarkKind.VALUE,
                        MarkKind.VALUE,
                        MarkKind.VALUE,
                        MarkKind.VALUE,
                        MarkKind.VALUE,
                        MarkKind.VALUE,
                        MarkKind.APART,
                        MarkKind.MEAN);
        assertThat(marks.get(1).shape().getBounds2D().getCenterX()).isCloseTo(110, within(1e-9));
        assertThat(marks.get(7).shape().getBounds2D().getCenterX()).isCloseTo(190, within(1e-9));
        assertThat(marks.get(8).shape().getBounds2D().getCenterX()).isCloseTo(SCALE.x(150), within(1e-9));
        assertThat(marks.get(0).shape().getBounds2D().getMinX()).isCloseTo(30, within(1e-9));
    }

    @Test
    void theLevelOfTheCarLiesBetweenItsEnds() throws Exception {
        VisitBuilder visit = new VisitBuilder();
        for (String zone : List.of("hood", "roof", "door-front-left", "door-front-right")) {
            List.of("98", "101", "103").forEach(value -> visit.reading(zone, value));
        }
        StripScale.Level level = SCALE.level(findings(visit));
        assertThat(level.low()).isLessThan(level.at());
        assertThat(level.at()).isCloseTo(SCALE.x(101), within(6.0)).isLessThan(level.high());
    }
}
