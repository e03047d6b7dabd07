package quarterlight.matters;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.findings.Findings;
import quarterlight.matters.rule.FindingKind;
import quarterlight.matters.rule.MatterRule;
import quarterlight.matters.rule.Safety;
import quarterlight.rust.TestVisits;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.VisitParts;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Judgment;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/** Severities and orders follow from the table in docs/methods/what-matters.md, worked out by hand. */
class MattersTest {
    private final List<Statement> statements = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<Trial> trials = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private final List<GaugeCheck> checks = new ArrayList<>();
    private List<ReportExclusion> leftOut = List.of();

    private Matters matters() {
        return Matters.of(
                Findings.of(
                        new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                                .statements(VisitParts.rows(statements))
                                .readings(VisitParts.rows(readings))
                                .marks(VisitParts.rows(marks))
                                .trials(VisitParts.rows(trials))
                                .claims(VisitParts.rows(claims))
                                .gaugeChecks(VisitParts.rows(checks))
                                .leftOut(VisitParts.rows(leftOut))
                                .record(),
                        ZoneTable.load(),
                        Map.of(),
                        DatePatternTable.load()),
                List.of(),
                TrialTable.load());
    }

    /** Without what every visit lacks that looked at little. */
    private List<Matter> found() {
        return matters().all().stream()
                .filter(matter -> matter.kind() != FindingKind.NOT_LOOKED_AT)
                .toList();
    }

    private void say(String zone, Facets what, String text, Severity severity, Basis basis) {
        statements.add(new Statement(
                new ZoneId(zone),
                what,
                text,
                Optional.ofNullable(severity),
                Optional.of(basis),
                Optional.empty(),
                Optional.empty()));
    }

    private void measure(String zone, String... mils) {
        for (String mil : mils) {
            readings.add(new Reading(
                    new ZoneId(zone),
                    new GaugeValue.Measured(new BigDecimal(mil), ThicknessUnit.MIL),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
        }
    }

    private void tried(String item, TrialResult result, String value, String unit) {
        trials.add(new Trial(
                item,
                result,
                Optional.ofNullable(value).map(BigDecimal::new),
                Optional.ofNullable(unit),
                Optional.empty(),
                Optional.empty()));
    }

    private void bears(String part, MarkKind kind, String zone) {
        marks.add(new Mark(
                part,
                kind,
                "H71C2A10448",
                Optional.empty(),
                Optional.empty(),
                Optional.of("H71C2A10447"),
                Optional.ofNullable(zone).map(ZoneId::new),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    private void check(String shown) {
        checks.add(new GaugeCheck(
                GaugeMoment.BEFORE,
                GaugeSurface.SHIM,
                new GaugeValue.Measured(new BigDecimal("10"), ThicknessUnit.MIL),
                new GaugeValue.Measured(new BigDecimal(shown), ThicknessUnit.MIL),
                OptionalDouble.empty(),
                OptionalDouble.of(3),
                OptionalDouble.empty(),
                Optional.empty()));
    }

    @Test
    void ofACarNobodyLookedAtOnlyThatIsSaid() {
        assertThat(matters().all())
                .extracting(Matter::rule)
                .containsExactly(MatterRule.STRUCTURE_NOT_SEEN, MatterRule.NOTHING_MEASURED);
        assertThat(matters().safety()).isEmpty();
        assertThat(matters().checked().lookedAt()).isZero();
        assertThat(matters().checked().measured()).isZero();
    }

    @Test
    void severityOrdersAndEqualOnesStandInTheOrderOfTheZoneTable() {
        say("rear-axle", Facets.of(Origin.REPLACED), "minor one", Severity.MINOR, Basis.SEEN);
        say("roof", Facets.of(Condition.WORN), "later in the table", Severity.MAJOR, Basis.SEEN);
        say("hood", Facets.of(Condition.WORN), "first in the table", Severity.MAJOR, Basis.SEEN);
        say("engine", Facets.of(Condition.WORN), "grave one", Severity.GRAVE, Basis.SEEN);
        assertThat(found())
                .extracting(Matter::sentence)
                .containsExactly(
                        "Worn: grave one.",
                        "Worn: first in the table.",
                        "Worn: later in the table.",
                        "Replaced: minor one.");
        assertThat(matters().lettered())
                .extracting(matter -> matter.letter().orElseThrow())
                .startsWith('A', 'B', 'C');
    }

    @Test
    void whatIsOnlyToldIsOneStepLowerAndWhatSaysThatAllIsWellIsNone() {
        say("hood", Facets.of(Condition.WORN), "told", Severity.GRAVE, Basis.TOLD);
        say("roof", Facets.of(Condition.WORN), "seen", Severity.MAJOR, Basis.SEEN);
        say("engine", Facets.of(Condition.SOUND), "well", Severity.GRAVE, Basis.SEEN);
        say("cowl", Facets.of(Condition.WORN), "a note", Severity.NOTE, Basis.SEEN);
        assertThat(found())
                .extracting(matter -> matter.severity() + " " + matter.sentence())
                .containsExactly("MAJOR Worn: seen.", "MAJOR Worn: told.", "NOTE Worn: a note.");
        assertThat(found()).as("a row that says the same again").allMatch(one -> one.further()
                .isEmpty());
        assertThat(matters().lettered()).extracting(Matter::sentence).doesNotContain("Worn: a note.");
    }

    @Test
    void aStatementAndTheNeedOfTheSameMetalAreOneMatterHeadedByTheInspector() {
        say(
                "torque-box-front-left",
                Facets.of(Condition.RUSTED_THROUGH),
                "hole by the bolt",
                Severity.GRAVE,
                Basis.SEEN);
        assertThat(found()).singleElement().satisfies(matter -> {
            assertThat(matter.id()).isEqualTo("metal:torque-box-front-left");
            assertThat(matter.sentence()).isEqualTo("Rusted through: hole by the bolt.");
            assertThat(matter.safety()).contains(Safety.STRUCTURE);
            assertThat(matter.evidence()).hasSize(2);
        });
    }

    @Test
    void rustStatedAsANoteOfWhatCarriesLoadIsGraveByItsNeed() {
        say("frame-rail-front-left", Facets.of(Condition.RUSTED_THROUGH), "small hole", Severity.NOTE, Basis.SEEN);
        assertThat(found()).singleElement().satisfies(matter -> {
            assertThat(matter.severity()).isEqualTo(Severity.GRAVE);
            assertThat(matter.rule()).isEqualTo(MatterRule.STRUCTURE_IN_QUESTION);
        });
    }

    @ParameterizedTest
    @CsvSource({
        "Brake pedal holds, does not, GRAVE, BRAKES",
        "Brake pedal holds, works with a fault, MAJOR, BRAKES",
        "Parking brake, does not, MAJOR, BRAKES",
        "Brake lamps, does not, MINOR, ",
        "Brake lamps, works with a fault, MINOR, ",
        "Steering lock to lock, does not, GRAVE, STEERING",
        "Steering lock to lock, works with a fault, MAJOR, STEERING",
        "Starter interlock, bypassed, MAJOR, INTERLOCK",
        "Smell of fuel, some, GRAVE, FUEL",
        "Fuel gauge, does not, MINOR, ",
        "Belts latch and retract, does not, MAJOR, RESTRAINT",
        "Engine turns by hand, does not, MAJOR, ",
        "Every gear, does not, MAJOR, ",
        "Radio, does not, MINOR, ",
        "Wipers, works with a fault, NOTE, ",
        "Smoke at the exhaust, heavy, MAJOR, ",
        "Noise from axle or bearings, some, NOTE, "
    })
    void aTrialIsRankedByWhatItIsAbout(String item, String result, Severity severity, Safety safety) {
        tried(item, Worded.find(TrialResult.class, result).orElseThrow(), null, null);
        assertThat(found()).singleElement().satisfies(matter -> {
            assertThat(matter.severity()).isEqualTo(severity);
            assertThat(matter.safety()).isEqualTo(Optional.ofNullable(safety));
        });
    }

    @ParameterizedTest
    @CsvSource({"Brake pedal holds, works", "Air conditioning, not fitted", "Smoke at the exhaust, none"})
    void whatWorksOrIsNotThereIsNone(String item, String result) {
        tried(item, Worded.find(TrialResult.class, result).orElseThrow(), null, null);
        assertThat(found()).isEmpty();
    }

    @Test
    void aTreadAtItsLimitHoldsAndOneBelowDoesNot() {
        tried("Tread, left front", TrialResult.WORKS, "1.6", "mm");
        tried("Tread, left rear", TrialResult.MEASURED, "2", "1/32 in");
        assertThat(found()).isEmpty();
        tried("Tread, right front", TrialResult.MEASURED, "1.5", "mm");
        assertThat(found()).extracting(Matter::rule).containsExactly(MatterRule.TIRES_BELOW_LIMIT);
        tried("Tread, right rear", TrialResult.MEASURED, "1", "1/32 in");
        assertThat(found()).hasSize(2);
    }

    @Test
    void brakesNotTriedAreMinorAndARadioNotTriedIsANote() {
        tried("Brake pedal holds", TrialResult.NOT_TRIED, null, null);
        tried("Radio", TrialResult.NOT_TRIED, null, null);
        assertThat(matters().find("trial:brake-pedal-holds").orElseThrow().severity())
                .isEqualTo(Severity.MINOR);
        assertThat(matters().find("trial:radio").orElseThrow().severity()).isEqualTo(Severity.NOTE);
    }

    @ParameterizedTest
    @CsvSource({
        "Body stamp, STAMP, , IDENTITY_CONTRADICTS",
        "Cowl stamp, STAMP, cowl, IDENTITY_CONTRADICTS",
        "Number, VIN, dash, IDENTITY_CONTRADICTS",
        "Engine stamp, STAMP, engine, NUMBER_CONTRADICTS",
        "Alternator, STAMP, ignition-charging, NUMBER_CONTRADICTS",
        "Engine block, STAMP, , NUMBER_CONTRADICTS"
    })
    void aNumberOfTheCarIsGraverThanOneOfAPart(String part, MarkKind kind, String zone, MatterRule rule) {
        bears(part, kind, zone);
        assertThat(found()).extracting(Matter::rule).containsExactly(rule);
    }

    @Test
    void aFailedGaugeCheckIsMajorAndAPassedOneIsNone() {
        measure("hood", "5.0", "5.1", "5.2");
        check("10.3");
        assertThat(found()).isEmpty();
        check("10.4");
        assertThat(found()).extracting(Matter::rule).containsExactly(MatterRule.GAUGE_FAILED);
        checks.clear();
        assertThat(found()).extracting(Matter::rule).containsExactly(MatterRule.READINGS_NOT_CHECKED);
    }

    @Test
    void aClaimContradictedIsMajorAnOpenOneANoteAndASupportedOneNone() {
        for (Judgment judged : Judgment.values()) {
            claims.add(new Claim(
                    "It is " + judged,
                    Claimant.SELLER,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(judged),
                    false));
        }
        assertThat(found())
                .extracting(Matter::rule)
                .containsExactly(MatterRule.CLAIM_CONTRADICTED, MatterRule.CLAIM_OPEN);
    }

    @Test
    void panelsThatWereRefinishedAndNoMoreAreOneMatterTogether() {
        for (String zone : List.of("hood", "decklid", "door-front-right", "fender-right", "roof", "cowl")) {
            measure(zone, "4.9", "5.0", "5.1", "5.2", "5.0");
        }
        for (String zone : List.of("door-front-left", "fender-left")) {
            measure(zone, "10.4", "10.6", "10.9", "10.5", "10.8");
        }
        check("10.0");
        assertThat(found()).singleElement().satisfies(matter -> {
            assertThat(matter.zones()).containsExactly(new ZoneId("fender-left"), new ZoneId("door-front-left"));
            assertThat(matter.sentence()).isEqualTo("2 panels were likely refinished.");
            assertThat(matter.severity()).isEqualTo(Severity.MINOR);
        });
        assertThat(matters().checked().measured()).isEqualTo(8);
    }

    @Test
    void aZoneLeftOutByTheInspectorIsNoMatterAndDoesNotCount() {
        int zones = matters().checked().zones();
        say("hood", Facets.of(Condition.DAMAGED), "dent", Severity.MAJOR, Basis.SEEN);
        leftOut = List.of(ReportExclusion.of(new ZoneId("hood")));
        assertThat(found()).isEmpty();
        assertThat(matters().checked().zones()).isEqualTo(zones - 1);
    }

    @Test
    void fortyGraveOnesHaveSevenLettersAndAllStand() {
        for (int n = 0; n < 40; n++) {
            trials.add(new Trial(
                    "Brake " + n,
                    TrialResult.DOES_NOT,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
        }
        assertThat(matters().of(Severity.GRAVE)).hasSize(40);
        assertThat(matters().lettered()).hasSize(7).allMatch(matter -> matter.severity() == Severity.GRAVE);
        assertThat(matters().safety()).hasSize(40);
    }

    @Test
    void whatCouldTurnUpSomethingGraveIsLookedAtFirst() {
        assertThat(matters().next()).extracting(look -> look.turns().ordinal()).isSortedAccordingTo((a, b) -> b - a);
        assertThat(matters().next().get(0).what()).startsWith("Look for rust");
    }

    @Test
    void mainPartsAndTheSheetMetalAroundThemAreToldApartInWhatToLookAtNext() {
        List<NextLook> unseen = matters().next().stream()
                .filter(look -> look.what().startsWith("Look for rust"))
                .toList();
        assertThat(unseen).hasSize(2);
        assertThat(unseen.get(0).turns()).isEqualTo(Severity.GRAVE);
        assertThat(unseen.get(0).what())
                .contains("carries engine, axles, suspension")
                .doesNotContain("shares");
        assertThat(unseen.get(1).turns()).isEqualTo(Severity.MAJOR);
        assertThat(unseen.get(1).what()).contains("shares the load").doesNotContain("carries");
    }

    @Test
    void whatConcernsMoreThanSixZonesIsWidespread() {
        Matter unseen = matters().all().stream()
                .filter(matter -> matter.rule() == MatterRule.STRUCTURE_NOT_SEEN)
                .findFirst()
                .orElseThrow();
        assertThat(unseen.isWidespread()).isTrue();
        assertThat(over(unseen, 6).isWidespread()).isFalse();
        assertThat(over(unseen, 7).isWidespread()).isTrue();
    }

    private static Matter over(Matter matter, int zones) {
        return new Matter(
                matter.id(),
                matter.letter(),
                matter.place(),
                matter.zones().subList(0, zones),
                matter.ruled(),
                matter.decision(),
                matter.findings(),
                matter.photos());
    }
}
