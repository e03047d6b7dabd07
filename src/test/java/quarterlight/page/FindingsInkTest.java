package quarterlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.findings.Findings;
import quarterlight.store.SampleVisit;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.thickness.VisitBuilder;
import quarterlight.units.ThicknessUnit;

/** Only what was measured, seen or looked for is drawn: the likelihood that a panel has by others, or by no evidence, is no finding. */
class FindingsInkTest {
    private static final ZoneId ROOF = new ZoneId("roof");

    @Test
    void panelsWithoutEvidenceStayBlankBesideOneThatIsThick() throws Exception {
        VisitBuilder visit = new VisitBuilder();
        for (String um : List.of("610", "640", "655", "630")) {
            visit.reading("hood", um);
        }
        Findings car = Findings.of(visit.build(), ZoneTable.load(), Map.of(), DatePatternTable.load());
        DiagramInk ink = FindingsInk.of(car, ThicknessRamp.of(List.of(car), ThicknessUnit.UM), List.of());
        assertThat(ink.looks()).containsOnlyKeys(SampleVisit.HOOD);
        assertThat(ink.lookOf(SampleVisit.HOOD).number()).isNotEmpty();
        assertThat(ink.lookOf(SampleVisit.HOOD).hatch()).isPositive();
        assertThat(ink.lookOf(ROOF)).isEqualTo(ZoneLook.NONE);
        assertThat(ink.lookOf(ROOF).hatch()).isZero();
    }
}
