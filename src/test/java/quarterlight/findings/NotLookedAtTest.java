package quarterlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.rust.TestVisits;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/** What was not looked at, by the list of zones that carry load and of panels that a gauge can read (docs/methods/rust.md, thickness.md). */
class NotLookedAtTest {
    private static Statement said(String zone, Condition condition) {
        return new Statement(
                new ZoneId(zone),
                Facets.of(condition),
                "covered by a mat",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Reading reading(String zone, Optional<GaugeMode> mode) {
        return new Reading(
                new ZoneId(zone),
                new GaugeValue.Measured(BigDecimal.valueOf(110), ThicknessUnit.UM),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                mode,
                Optional.empty(),
                Optional.empty());
    }

    private static List<String> ids(List<Zone> zones) {
        return zones.stream().map(zone -> zone.id().value()).toList();
    }

    @Test
    void ofAFreshVisitAllZonesThatCarryLoadAndAllPanelsAreOpen() {
        Findings car = WorkedOut.beside(parts -> parts);
        NotLookedAt open = NotLookedAt.of(car);
        assertThat(ids(open.structural()))
                .contains("frame-rail-front-left", "inner-rocker-right", "floor-front-left", "roof")
                .doesNotContain("hood", "fuel-tank", "steering-wheel");
        assertThat(ids(open.unmeasured())).contains("hood", "roof").doesNotContain("frame-rail-front-left");
        assertThat(open.unmeasured()).hasSize(open.panels()).allMatch(Zone::finish);
        assertThat(open.nothingMeasured()).isTrue();
        assertThat(open.stated()).isEmpty();
        assertThat(open.untried()).isEmpty();
        assertThat(open.sentences()).hasSize(2);
    }

    @Test
    void aLookForRustClosesAZoneAndAReadingAPanel() {
        NotLookedAt open = NotLookedAt.of(
                WorkedOut.of(parts -> parts.statements(TestVisits.rows(List.of(said("roof", Condition.NO_RUST))))
                        .readings(TestVisits.rows(List.of(reading("hood", Optional.empty()))))));
        assertThat(ids(open.structural())).doesNotContain("roof").contains("inner-rocker-right");
        assertThat(ids(open.unmeasured())).doesNotContain("hood").contains("roof");
        assertThat(open.nothingMeasured()).isFalse();
    }

    /** By magnetic induction steel is read, by eddy current other metal (scopes of ISO 2178 and ISO 2360). */
    @Test
    void panelsThatTheGaugeOfTheDayCannotReadAreNotMissed() {
        NotLookedAt open = NotLookedAt.of(WorkedOut.of(
                parts -> parts.readings(TestVisits.rows(List.of(reading("hood", Optional.of(GaugeMode.EDDY)))))));
        assertThat(ids(open.unmeasured())).doesNotContain("roof");
        assertThat(new NotLookedAt(List.of(), List.of(), List.of(), 0, List.of()).nothingMeasured())
                .isFalse();
    }

    @Test
    void zonesLeftOutOfThePagesAreNotMissed() {
        NotLookedAt open = NotLookedAt.of(WorkedOut.beside(
                parts -> parts.leftOut(TestVisits.rows(List.of(ReportExclusion.of(new ZoneId("roof")))))));
        assertThat(ids(open.structural())).doesNotContain("roof");
        assertThat(ids(open.unmeasured())).doesNotContain("roof").contains("hood");
    }

    @Test
    void whatWasStatedAsNotLookedAtIsSaidWithItsZoneAndNothingElseIs() {
        NotLookedAt open = NotLookedAt.of(WorkedOut.beside(parts -> parts.statements(
                TestVisits.rows(List.of(said("trunk-floor", Condition.NOT_LOOKED_AT), said("hood", Condition.WORN))))));
        assertThat(open.stated()).singleElement().asString().contains("Trunk floor", "covered by a mat");
        assertThat(open.sentences()).hasSize(3).first().isEqualTo(open.stated().get(0));
    }

    @Test
    void functionsThatWereNotTriedAreNamedWithTheirReason() {
        NotLookedAt open = NotLookedAt.of(WorkedOut.beside(parts -> parts.trials(TestVisits.rows(List.of(
                trial("Horn", TrialResult.NOT_TRIED, Optional.of("no battery")),
                trial("Wipers", TrialResult.NOT_TRIED, Optional.empty()),
                trial("Lights", TrialResult.WORKS, Optional.empty()))))));
        assertThat(open.untried()).containsExactly("Horn (no battery)", "Wipers");
        assertThat(open.sentences().get(2)).contains("Not tried", "Horn (no battery); Wipers");
    }

    private static Trial trial(String item, TrialResult result, Optional<String> note) {
        return new Trial(item, result, Optional.empty(), Optional.empty(), Optional.empty(), note);
    }

    @Test
    void sixZonesAreNamedAndTheOthersCounted() {
        List<Zone> zones =
                WorkedOut.beside(parts -> parts).zones().stream().limit(8).toList();
        assertThat(sentence(zones.subList(0, 6))).contains(zones.get(5).label()).doesNotContain("more");
        assertThat(sentence(zones.subList(0, 7)))
                .contains(zones.get(5).label(), "and 1 more")
                .doesNotContain(zones.get(6).label());
        assertThat(sentence(zones)).contains("and 2 more");
    }

    private static String sentence(List<Zone> zones) {
        return new NotLookedAt(List.of(), zones, List.of(), 5, List.of())
                .sentences()
                .get(0);
    }

    @Test
    void nothingOpenNeedsNoSentence() {
        assertThat(new NotLookedAt(List.of(), List.of(), List.of(), 12, List.of()).sentences())
                .isEmpty();
        List<Zone> panels =
                new ArrayList<>(WorkedOut.beside(parts -> parts).zones().subList(0, 1));
        assertThat(new NotLookedAt(List.of(), List.of(), panels, 1, List.of()).sentences())
                .singleElement()
                .asString()
                .contains("without a reading", panels.get(0).label());
        assertThat(new NotLookedAt(List.of(), List.of(), panels, 2, List.of()).nothingMeasured())
                .isFalse();
    }

    @Test
    void whatIsWorkedOutKeepsItsRestBesideAnotherVisit() {
        Findings car =
                WorkedOut.of(parts -> parts.readings(TestVisits.rows(List.of(reading("hood", Optional.empty())))));
        Findings other = car.beside(WorkedOut.beside(parts -> parts).visit());
        assertThat(other.visit().readings()).isEmpty();
        assertThat(other.thickness()).isSameAs(car.thickness());
        assertThat(other.history().zone(new ZoneId("hood"))).isPresent();
        assertThat(Findings.of(
                                other.visit(),
                                other.catalog(),
                                Map.of(),
                                quarterlight.table.list.DatePatternTable.load())
                        .rust()
                        .zones())
                .isNotEmpty();
    }
}
