package quarterlight.ui.diagram;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.findings.Findings;
import quarterlight.findings.Measured;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.store.SampleVisit;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.thickness.VisitBuilder;
import quarterlight.ui.kit.Texts;
import quarterlight.units.ThicknessUnit;

/** What was measured is on the diagram before anything was judged, and with the judgment the same numbers stand there. */
class LayerInkTest {
    private static final Set<Layer> ALL = Set.of(Layer.THICKNESS, Layer.LIKELIHOOD, Layer.RUST);

    @Test
    void numbersAndTintsDoNotWaitForTheJudgment() throws Exception {
        VisitBuilder visit = new VisitBuilder();
        for (String um : List.of("610", "640", "655", "630")) {
            visit.reading("hood", um);
        }
        for (String um : List.of("118", "121", "117", "120")) {
            visit.reading("roof", um);
        }
        Measured measured = Measured.of(visit.build(), ZoneTable.load(), ZoneSizes.NONE);
        DiagramInk bare = ink(Optional.of(measured), Optional.empty(), ALL);
        assertThat(bare.lookOf(SampleVisit.HOOD).number()).isEqualTo("634");
        assertThat(bare.lookOf(SampleVisit.HOOD).hatch())
                .as("nothing is judged")
                .isZero();
        assertThat(bare.legend().flatMap(legend -> legend.steps())).isPresent();
        assertThat(ink(Optional.of(measured), Optional.empty(), Set.of(Layer.RUST))
                        .looks())
                .allSatisfy((zone, look) -> assertThat(look.number()).isEmpty());
        assertThat(ink(Optional.of(measured), Optional.empty(), Set.of(Layer.COVERAGE))
                        .looks())
                .as("what is covered is not known yet")
                .isEmpty();

        DiagramInk judged = ink(Optional.of(measured), Optional.of(measured.judged(DatePatternTable.load())), ALL);
        assertThat(judged.lookOf(SampleVisit.HOOD).hatch()).isPositive();
        assertThat(judged.looks().keySet()).isEqualTo(bare.looks().keySet());
        judged.looks().forEach((zone, look) -> {
            assertThat(bare.lookOf(zone).number()).isEqualTo(look.number());
            assertThat(bare.lookOf(zone).step()).isEqualTo(look.step());
        });
    }

    private static DiagramInk ink(Optional<Measured> measured, Optional<Findings> findings, Set<Layer> layers) {
        return LayerInk.of(Texts.load(), measured, findings, List.of(), layers, ThicknessUnit.UM, List.of(), Map.of());
    }
}
