package quarterlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.rust.TestVisits;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.LeftOut;
import quarterlight.visit.VisitParts;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/** Orders follow from the table in docs/methods/what-matters.md. */
class WhatMattersTest {
    private final List<Statement> statements = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private List<LeftOut> leftOut = List.of();

    private List<Matter> matters() {
        return WhatMatters.of(
                Findings.of(
                        new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                                .statements(VisitParts.rows(statements))
                                .readings(VisitParts.rows(readings))
                                .marks(VisitParts.rows(marks))
                                .leftOut(VisitParts.rows(leftOut))
                                .record(),
                        ZoneTable.load(),
                        Map.of(),
                        DatePatternTable.load()),
                MatterWeights.V1);
    }

    private void say(String zone, Facets kind, String text, Severity severity, Basis basis) {
        statements.add(new Statement(
                new ZoneId(zone),
                kind,
                text,
                Optional.of(severity),
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

    @Test
    void aCarOfWhichNothingIsKnownHasNoMatters() {
        assertThat(matters()).isEmpty();
    }

    @Test
    void severityOrdersAndEqualOnesStandInTheOrderOfTheZoneTable() {
        say("rear-axle", Facets.of(Origin.REPLACED), "minor one", Severity.MINOR, Basis.SEEN);
        say("roof", Facets.of(Condition.DAMAGED), "later in the table", Severity.MAJOR, Basis.SEEN);
        say("hood", Facets.of(Condition.DAMAGED), "first in the table", Severity.MAJOR, Basis.SEEN);
        say("engine", Facets.of(Condition.DAMAGED), "grave one", Severity.GRAVE, Basis.SEEN);
        assertThat(matters())
                .extracting(Matter::headline)
                .containsExactly("grave one", "first in the table", "later in the table", "minor one");
    }

    @Test
    void whatIsOnlyToldWeighsHalfAndWhatSaysThatAllIsWellWeighsNothing() {
        say("hood", Facets.of(Condition.WORN), "told", Severity.GRAVE, Basis.TOLD);
        say("roof", Facets.of(Condition.WORN), "seen", Severity.MAJOR, Basis.SEEN);
        say("engine", Facets.of(Condition.SOUND), "well", Severity.GRAVE, Basis.SEEN);
        say("decklid", Facets.of(Condition.NOT_LOOKED_AT), "covered", Severity.GRAVE, Basis.SEEN);
        say("cowl", Facets.of(Condition.WORN), "a note", Severity.NOTE, Basis.SEEN);
        assertThat(matters()).extracting(Matter::headline).containsExactly("seen", "told");
    }

    @Test
    void allOfOneZoneIsOneMatterWithEveryPieceOfItsEvidence() {
        say("hood", Facets.of(Condition.WORN), "dent", Severity.MAJOR, Basis.SEEN);
        say("hood", Facets.of(Origin.DOES_NOT_BELONG), "vent of another car", Severity.MINOR, Basis.FROM_PAPERS);
        assertThat(matters()).singleElement().satisfies(matter -> {
            assertThat(matter.weight()).isEqualTo(60 + 3);
            assertThat(matter.evidence())
                    .containsExactly("Seen, major: dent", "From papers, minor: vent of another car");
        });
    }

    @Test
    void panelsThatWereRefinishedAndNoMoreAreOneMatterTogether() {
        for (String zone : List.of("hood", "decklid", "door-front-right", "fender-right", "roof", "cowl")) {
            measure(zone, "4.9", "5.0", "5.1", "5.2", "5.0");
        }
        for (String zone : List.of("door-front-left", "fender-left")) {
            measure(zone, "10.4", "10.6", "10.9", "10.5", "10.8");
        }
        assertThat(matters()).singleElement().satisfies(matter -> {
            assertThat(matter.zones()).containsExactly(new ZoneId("fender-left"), new ZoneId("door-front-left"));
            assertThat(matter.headline()).isEqualTo("2 panels were likely refinished.");
            assertThat(matter.weight()).isEqualTo(40 + 2 * 2);
        });
    }

    @Test
    void aNumberThatDiffersIsAMatterOfItsPartWhereNoZoneIsGiven() {
        marks.add(new Mark(
                "Body stamp",
                MarkKind.STAMP,
                "H71C2A10448",
                Optional.empty(),
                Optional.empty(),
                Optional.of("H71C2A10447"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        say("hood", Facets.of(Condition.DAMAGED), "dent", Severity.MAJOR, Basis.SEEN);
        assertThat(matters()).extracting(Matter::place).containsExactly("Body stamp", "Hood");
        assertThat(matters().get(0).weight()).isEqualTo(85);
    }

    @Test
    void aZoneLeftOutByTheInspectorIsNoMatter() {
        say("hood", Facets.of(Condition.DAMAGED), "dent", Severity.MAJOR, Basis.SEEN);
        leftOut = List.of(LeftOut.of(new ZoneId("hood")));
        assertThat(matters()).isEmpty();
    }
}
