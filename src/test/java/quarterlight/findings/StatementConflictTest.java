package quarterlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.rust.TestVisits;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.visit.VisitParts;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** Statements that cannot both hold are named; those on different parts are not. The pairs follow docs/methods/what-matters.md. */
class StatementConflictTest {
    private static final ZoneId HOOD = new ZoneId("hood");

    private static Statement said(String zone, String part, String word) {
        return new Statement(
                new ZoneId(zone),
                Facets.ofEarlierKind(word).orElseThrow(),
                "it is " + word,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                StatementDetails.NONE.withPart(Optional.of(part).filter(name -> !name.isEmpty())));
    }

    private static List<StatementConflict> conflicts(Statement... statements) {
        return StatementConflict.of(List.of(statements), HOOD);
    }

    @ParameterizedTest
    @CsvSource({
        "original, replaced, true",
        "original, does not belong, true",
        "replaced, does not belong, false",
        "replaced, replaced, false",
        "no rust, surface rust, true",
        "no rust, rusted through, true",
        "no rust, damaged, false",
        "surface rust, pitted, false",
        "sound, damaged, true",
        "sound, leaking, true",
        "sound, rusted through, true",
        "sound, surface rust, false",
        "sound, worn, false",
        "sound, refinished, false",
        "missing, present, true",
        "missing, worn, true",
        "missing, not looked at, false",
        "missing, missing, false",
        "original, damaged, false",
        "filler, refinished, false",
    })
    void pairsThatCannotBothHoldAreNamedWhicheverIsSaidFirst(String one, String other, boolean conflict) {
        assertThat(conflicts(said("hood", "", one), said("hood", "", other))).hasSize(conflict ? 1 : 0);
        assertThat(conflicts(said("hood", "", other), said("hood", "", one))).hasSize(conflict ? 1 : 0);
    }

    @ParameterizedTest
    @CsvSource({
        "hood, upper hose, hood, upper hose, true",
        "hood, upper hose, hood, Upper  Hose, true",
        "hood, upper hose, hood, lower hose, false",
        "hood, upper hose, hood, '', false",
        "hood, '', hood, upper hose, false",
        "hood, '', roof, '', false",
    })
    void onlyTheSamePartOfTheSameZoneMeets(String zone, String part, String zone2, String part2, boolean conflict) {
        assertThat(conflicts(said(zone, part, "sound"), said(zone2, part2, "leaking")))
                .hasSize(conflict ? 1 : 0);
    }

    @Test
    void theSentenceNamesThePartBothTextsAndWhoSaysSo() {
        Statement told = said("hood", "hinge", "original");
        Statement seller = new Statement(
                told.zone(),
                told.what(),
                told.text(),
                told.severity(),
                told.basis(),
                told.photo(),
                told.atSeconds(),
                told.more(),
                told.details().withSaidBy(SaidBy.SELLER));
        assertThat(conflicts(said("hood", "hinge", "replaced"), seller).get(0).sentence())
                .isEqualTo(
                        "Contradiction of hinge: \u201cit is replaced\u201d (replaced) against \u201cit is original\u201d"
                                + " (original, said by seller).");
    }

    private static List<Matter> matters(List<Recorded<Statement>> rows) {
        return Matters.of(
                        Findings.of(
                                new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                                        .statements(rows)
                                        .record(),
                                ZoneTable.load(),
                                Map.of(),
                                DatePatternTable.load()),
                        List.of(),
                        TrialTable.load())
                .all()
                .stream()
                .filter(matter -> matter.id().startsWith("conflict:"))
                .toList();
    }

    @Test
    void itIsAMatterOfTheZoneUntilOneIsWithdrawn() {
        List<Recorded<Statement>> rows = new ArrayList<>(
                VisitParts.rows(List.of(said("hood", "hinge", "sound"), said("hood", "hinge", "leaking"))));
        assertThat(matters(rows)).singleElement().satisfies(matter -> {
            assertThat(matter.zones()).containsExactly(HOOD);
            assertThat(matter.severity()).isEqualTo(Severity.MINOR);
            assertThat(matter.sentence()).startsWith("Contradiction of hinge");
        });
        Statement back = said("hood", "hinge", "sound");
        rows.add(new Recorded<>(
                new RecordId(99),
                new Statement(
                        HOOD,
                        back.what(),
                        "dry",
                        back.severity(),
                        back.basis(),
                        back.photo(),
                        back.atSeconds(),
                        List.of(),
                        new StatementDetails(
                                back.details().part(),
                                Optional.empty(),
                                SaidBy.INSPECTOR,
                                Optional.empty(),
                                false,
                                Optional.of(rows.get(1).id())))));
        assertThat(matters(rows)).isEmpty();
    }
}
