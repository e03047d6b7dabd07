package quarterlight.ui.gauge;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.edit.gauge.FinishEdits;
import quarterlight.table.ZoneTable;
import quarterlight.thickness.VisitBuilder;
import quarterlight.ui.gauge.check.CheckSheet;
import quarterlight.ui.gauge.sign.SignSheet;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.trial.SignKind;

/** The sheets of signs and of gauge checks, as the window shows them. */
class SheetsTest {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId ROOF = new ZoneId("roof");
    private static final ZoneId UNDERSIDE = new ZoneId("hood-underside");

    private final ZoneCatalog catalog = ZoneTable.load();
    private final VisitBuilder visit = new VisitBuilder();

    private SignSheet signs(Map<ZoneId, Optional<ZoneId>> wanted) {
        return SignSheet.of(visit.build(), catalog, wanted);
    }

    @Test
    void allRoundLeavesWhatIsNoted() {
        visit.sign("hood", SignKind.OVERSPRAY, true, "").sign("roof", SignKind.RIPPLE, true, "");
        SignSheet sheet = signs(Map.of());
        Set<FinishEdits.Place> places = sheet.allRound(Set.of(SignKind.OVERSPRAY));
        assertThat(places).extracting(FinishEdits.Place::zone).contains(ROOF).doesNotContain(HOOD);
        assertThat(places).hasSize(sheet.rows().size() - 1);
    }

    @Test
    void aZoneWithoutFinishStandsInTheSheetOnceNotedOrWanted() {
        assertThat(signs(Map.of()).rows()).noneMatch(row -> row.zone().equals(UNDERSIDE));
        assertThat(signs(Map.of(UNDERSIDE, Optional.empty())).rows())
                .anyMatch(row -> row.zone().equals(UNDERSIDE) && !row.panel());
        visit.sign("hood-underside", SignKind.FACTORY_STENCIL, true, "hood");
        SignSheet sheet = signs(Map.of());
        assertThat(sheet.rows())
                .anyMatch(row -> row.zone().equals(UNDERSIDE) && row.speaksFor().equals(Optional.of(HOOD)));
        assertThat(sheet.cell(HOOD, SignKind.FACTORY_STENCIL).elsewhere()).contains(true);
        assertThat(sheet.cell(HOOD, SignKind.FACTORY_STENCIL).seen()).isEmpty();
        assertThat(sheet.allRound(Set.of(SignKind.OVERSPRAY)))
                .noneMatch(place -> place.zone().equals(UNDERSIDE));
    }

    @Test
    void seenWinsInACell() {
        visit.sign("hood", SignKind.RIPPLE, false, "").sign("hood", SignKind.RIPPLE, true, "");
        assertThat(signs(Map.of()).cell(HOOD, SignKind.RIPPLE).seen()).contains(true);
        assertThat(signs(Map.of()).cell(HOOD, SignKind.TAPE_EDGE).seen()).isEmpty();
    }

    private static GaugeCheck check(GaugeMoment when, GaugeSurface on, String nominal, String shown) {
        return new GaugeCheck(
                when,
                on,
                mil(nominal),
                mil(shown),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    private static GaugeValue.Measured mil(String typed) {
        return new GaugeValue.Measured(new BigDecimal(typed), ThicknessUnit.MIL);
    }

    @Test
    void beforeAndAfterOfASurfaceShareARowAndBareMetalIsAlwaysThere() {
        assertThat(CheckSheet.of(visit.build(), List.of(), ThicknessUnit.MIL).rows())
                .singleElement()
                .matches(row -> row.on() == GaugeSurface.BARE && row.before().isEmpty());
        visit.check(check(GaugeMoment.BEFORE, GaugeSurface.SHIM, "20.0", "20.2"))
                .check(check(GaugeMoment.BEFORE, GaugeSurface.SHIM, "5.0", "5.1"))
                .check(check(GaugeMoment.BEFORE, GaugeSurface.BARE, "0", "0.0"))
                .check(check(GaugeMoment.AFTER, GaugeSurface.SHIM, "5.0", "5.0"))
                .check(check(GaugeMoment.AFTER, GaugeSurface.SHIM, "5.0", "5.2"));
        List<CheckSheet.Row> planned =
                List.of(CheckSheet.surface(GaugeSurface.SHIM, mil("2.0"), OptionalDouble.of(0.5)));
        List<CheckSheet.Row> rows =
                CheckSheet.of(visit.build(), planned, ThicknessUnit.MIL).rows();
        assertThat(rows)
                .extracting(row -> row.nominal().typed().toPlainString())
                .containsExactly("0", "2.0", "5.0", "5.0", "20.0");
        assertThat(rows.get(2).before()).isPresent();
        assertThat(rows.get(2).after().orElseThrow().value().shown()).isEqualTo(mil("5.0"));
        assertThat(rows.get(3).before())
                .as("a second look stands in a row of its own")
                .isEmpty();
        assertThat(rows.get(3).after().orElseThrow().value().shown()).isEqualTo(mil("5.2"));
    }
}
