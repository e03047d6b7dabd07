package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.Substrate;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.rust.RustExtent;
import quarterlight.table.ZoneTable;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.thickness.VisitBuilder;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.trial.SignKind;

class FinishEvidenceTest {
    private final ZoneCatalog catalog = ZoneTable.load();
    private final VisitBuilder visit = new VisitBuilder();

    @Test
    void everyOuterPanelOfTheBodyTakesPart() {
        FinishEvidence evidence = evidence(Map.of());
        assertThat(evidence.zones())
                .hasSize((int) catalog.zonesOf(visit.build().facts().car().body()).stream()
                        .filter(Zone::finish)
                        .count());
        assertThat(evidence.zones()).noneMatch(ZoneEvidence::isJudged);
    }

    @Test
    void spotsAndCountsComeFromTheSurvey() {
        visit.reading("hood", "100", "a", "", "")
                .reading("hood", "110", "a", "", "")
                .reading("hood", "none")
                .reading("hood", "over");
        ZoneEvidence hood = zone("hood", Map.of());
        assertThat(hood.spotsUm()).containsExactly(105.0);
        assertThat(hood.noMetal()).isEqualTo(1);
        assertThat(hood.overRange()).isEqualTo(1);
    }

    @Test
    void theUnitThatWasTypedMakesNoDifference() {
        VisitRecord um = visit.reading("hood", "127").reading("hood", "101.6").build();
        VisitRecord mil = new VisitParts(um.facts())
                .readings(VisitParts.rows(List.of(mil("5"), mil("4"))))
                .record();
        assertThat(spots(mil)).hasSize(2).isEqualTo(spots(um));
    }

    @Test
    void aSpotLiesWhereItsFirstPlacedReadingDoesNumbersBeforeWhatIsBeyondTheRange() {
        ViewPoint front = new ViewPoint(View.TOP, .2, .5);
        ViewPoint rear = new ViewPoint(View.TOP, .8, .5);
        GaugeValue beyond = new GaugeValue.OverRange();
        VisitRecord record = new VisitParts(visit.build().facts())
                .readings(VisitParts.rows(List.of(
                        at(beyond, rear), at(new GaugeValue.Measured(new BigDecimal("5"), ThicknessUnit.MIL), front))))
                .record();
        ZoneEvidence hood = FinishEvidence.of(record, catalog, ThicknessSurvey.of(record, catalog), Map.of())
                .zone(new ZoneId("hood"))
                .orElseThrow();
        assertThat(hood.places()).containsExactly(front, rear);
        assertThat(hood.allPlaces()).containsExactly(front, rear);
    }

    private static Reading at(GaugeValue value, ViewPoint point) {
        return new Reading(
                new ZoneId("hood"),
                value,
                Optional.empty(),
                Optional.empty(),
                Optional.of(point),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Reading mil(String value) {
        return new Reading(
                new ZoneId("hood"),
                new GaugeValue.Measured(new BigDecimal(value), ThicknessUnit.MIL),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private List<Double> spots(VisitRecord record) {
        return FinishEvidence.of(record, catalog, ThicknessSurvey.of(record, catalog), Map.of())
                .zone(new ZoneId("hood"))
                .orElseThrow()
                .spotsUm();
    }

    @Test
    void aSignSpeaksForThePanelItNamesElseForItsZone() {
        String jamb = catalog.zonesOf(visit.build().facts().car().body()).stream()
                .filter(zone -> !zone.finish())
                .findFirst()
                .orElseThrow()
                .id()
                .value();
        visit.sign("roof", SignKind.RIPPLE, true, "")
                .sign(jamb, SignKind.OVERSPRAY, true, "fender-left")
                .sign(jamb, SignKind.TAPE_EDGE, true, "")
                .sign("hood", SignKind.FASTENER_DISTURBED, true, "fender-right");
        assertThat(zone("roof", Map.of()).signs()).containsOnly(Map.entry(SignKind.RIPPLE, true));
        assertThat(zone("fender-left", Map.of()).signs()).containsOnly(Map.entry(SignKind.OVERSPRAY, true));
        assertThat(zone("fender-right", Map.of()).signs()).containsOnly(Map.entry(SignKind.FASTENER_DISTURBED, true));
        assertThat(zone("hood", Map.of()).signs()).isEmpty();
        assertThat(evidence(Map.of()).zones().stream().filter(ZoneEvidence::isJudged))
                .hasSize(3);
    }

    @Test
    void aSignCountsOnceAndSeenWins() {
        visit.sign("roof", SignKind.RIPPLE, false, "")
                .sign("roof", SignKind.RIPPLE, true, "")
                .sign("roof", SignKind.RIPPLE, false, "");
        assertThat(zone("roof", Map.of()).signs()).containsOnly(Map.entry(SignKind.RIPPLE, true));
    }

    @Test
    void rustIsOfZonesLookedAtOnly() {
        Map<ZoneId, RustExtent> rust = Map.of(new ZoneId("roof"), RustExtent.NONE);
        assertThat(zone("roof", rust).rust()).contains(RustExtent.NONE);
        assertThat(zone("hood", rust).rust()).isEqualTo(Optional.empty());
    }

    @Test
    void aPanelOfFiberglassWithoutReadingsIsNotReadableEither() {
        visit.substrate("hood", Substrate.FIBERGLASS);
        assertThat(zone("hood", Map.of()).readable()).isFalse();
        assertThat(zone("roof", Map.of()).readable()).isTrue();
    }

    private FinishEvidence evidence(Map<ZoneId, RustExtent> rust) {
        VisitRecord record = visit.build();
        return FinishEvidence.of(record, catalog, ThicknessSurvey.of(record, catalog), rust);
    }

    private ZoneEvidence zone(String id, Map<ZoneId, RustExtent> rust) {
        return evidence(rust).zone(new ZoneId(id)).orElseThrow();
    }
}
