package quarterlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.marks.Contradiction;
import quarterlight.rust.TestVisits;
import quarterlight.visit.VisitParts;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.mark.DistanceUnit;
import quarterlight.visit.mark.OdometerFigure;
import quarterlight.visit.mark.OdometerSource;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Judgment;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** Claims laid against what was found: refinished from 60 on and first finish up to 20 (docs/methods/what-matters.md, compare.md), rust, figures, dates. */
class ClaimedAndFoundTest {
    private static final String HOOD = "hood";

    private static Claim claim(String about, String zone, String part) {
        return new Claim(
                "all is well",
                Claimant.SELLER,
                Optional.ofNullable(zone).map(ZoneId::new),
                Optional.ofNullable(part),
                Optional.empty(),
                Optional.ofNullable(about),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    private static ClaimedAndFound laid(Findings car) {
        return ClaimedAndFound.of(car).get(0);
    }

    private static UnaryOperator<VisitParts> claims(Claim... claims) {
        return parts -> parts.claims(VisitParts.rows(List.of(claims)));
    }

    private static Statement said(String zone, Condition condition, String text, Severity severity, String part) {
        return new Statement(
                new ZoneId(zone),
                Facets.of(condition),
                text,
                Optional.ofNullable(severity),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                StatementDetails.NONE.withPart(Optional.ofNullable(part)));
    }

    @ParameterizedTest
    @CsvSource({
        "0.60, CONTRADICTED",
        "0.594, OPEN",
        "0.21, OPEN",
        "0.20, SUPPORTED",
    })
    void paintIsContradictedFrom60OnAndSupportedUpTo20(double chance, Judgment judgment) {
        for (String about : List.of("Paint", "the finish", "never REFINISHed")) {
            Findings car = WorkedOut.withHistory(
                    WorkedOut.beside(claims(claim(about, null, null))), WorkedOut.refinished(HOOD, chance));
            assertThat(laid(car).judgment()).isEqualTo(judgment);
            assertThat(laid(car).found()).hasSize(judgment == Judgment.OPEN ? 0 : 1);
        }
    }

    @Test
    void thePanelThatContradictsIsNamedWithItsLikelihood() {
        Findings car = WorkedOut.withHistory(
                WorkedOut.beside(claims(claim("paint", null, null))),
                WorkedOut.refinished(HOOD, 0.73),
                WorkedOut.refinished("roof", 0.05));
        assertThat(laid(car).found()).singleElement().asString().contains("Hood", "73 of 100");
    }

    @Test
    void allPanelsMustBeUnlikelyForPaintToBeSupportedAndTheHighestIsTold() {
        UnaryOperator<VisitParts> claimed = claims(claim("paint", null, null));
        assertThat(laid(WorkedOut.withHistory(
                                WorkedOut.beside(claimed),
                                WorkedOut.refinished(HOOD, 0.05),
                                WorkedOut.refinished("roof", 0.4)))
                        .judgment())
                .isEqualTo(Judgment.OPEN);
        ClaimedAndFound low = laid(WorkedOut.withHistory(
                WorkedOut.beside(claimed), WorkedOut.refinished(HOOD, 0.05), WorkedOut.refinished("roof", 0.12)));
        assertThat(low.judgment()).isEqualTo(Judgment.SUPPORTED);
        assertThat(low.found()).singleElement().asString().contains("2 zones", "12 of 100");
    }

    @Test
    void aPriorSpeaksNeitherForNorAgainstPaint() {
        for (double chance : new double[] {0.01, 0.99}) {
            Findings car = WorkedOut.withHistory(
                    WorkedOut.beside(claims(claim("paint", null, null))), WorkedOut.unmeasured(HOOD, chance));
            assertThat(laid(car).judgment()).isEqualTo(Judgment.OPEN);
            assertThat(laid(car).found()).isEmpty();
        }
    }

    @Test
    void onlyTheZoneThatIsClaimedCounts() {
        Findings car = WorkedOut.withHistory(
                WorkedOut.beside(claims(claim("paint", "roof", null), claim("engine noise", null, null))),
                WorkedOut.refinished(HOOD, 0.99),
                WorkedOut.refinished("roof", 0.03));
        assertThat(ClaimedAndFound.of(car))
                .extracting(ClaimedAndFound::judgment)
                .containsExactly(Judgment.SUPPORTED, Judgment.OPEN);
    }

    @Test
    void whatTheInspectorDecidedHoldsBeforeTheProposal() {
        Claim open = claim("paint", null, null);
        Claim judged = new Claim(
                open.text(),
                open.by(),
                open.zone(),
                open.part(),
                open.date(),
                open.about(),
                open.photo(),
                Optional.of(Judgment.SUPPORTED),
                false);
        Findings car = WorkedOut.withHistory(WorkedOut.beside(claims(judged)), WorkedOut.refinished(HOOD, 0.9));
        assertThat(laid(car).proposed()).isEqualTo(Judgment.CONTRADICTED);
        assertThat(laid(car).judgment()).isEqualTo(Judgment.SUPPORTED);
    }

    private static Findings rustClaim(String about, String zone, List<Trace> traces, Statement... statements) {
        return WorkedOut.of(parts -> claims(claim(about, zone, null))
                .apply(parts)
                .traces(VisitParts.rows(traces))
                .statements(VisitParts.rows(List.of(statements))));
    }

    @Test
    void rustSeenByEyeContradictsAndSaysThatItWasNotMeasured() {
        Findings car = rustClaim("no rust", null, List.of(), said(HOOD, Condition.PITTED, "pits", null, null));
        assertThat(laid(car).judgment()).isEqualTo(Judgment.CONTRADICTED);
        assertThat(laid(car).found()).anyMatch(text -> text.contains("Hood") && text.contains("by eye"));
        assertThat(laid(rustClaim("rust", "roof", List.of(), said(HOOD, Condition.PITTED, "pits", null, null)))
                        .judgment())
                .isEqualTo(Judgment.OPEN);
    }

    @Test
    void aCleanLookSupportsAClaimOfItsZoneButNotOfTheCar() {
        Statement clean = said(HOOD, Condition.NO_RUST, "clean", null, null);
        ClaimedAndFound zone = laid(rustClaim("Corrosion", HOOD, List.of(), clean));
        assertThat(zone.judgment()).isEqualTo(Judgment.SUPPORTED);
        assertThat(zone.found()).anyMatch(text -> text.contains("none seen"));
        assertThat(laid(rustClaim("rust", null, List.of(), clean)).judgment()).isEqualTo(Judgment.OPEN);
        assertThat(laid(rustClaim("rust", "roof", List.of(), clean)).judgment()).isEqualTo(Judgment.OPEN);
    }

    private static OdometerFigure figure(long miles, DistanceUnit unit, String date, boolean round) {
        return new OdometerFigure(
                BigDecimal.valueOf(miles),
                unit,
                OdometerSource.PAPERS,
                Optional.ofNullable(date).flatMap(PartialDate::parse),
                round,
                Optional.empty());
    }

    private static ClaimedAndFound mileage(String about, OdometerFigure... figures) {
        List<Recorded<OdometerFigure>> rows = VisitParts.rows(List.of(figures));
        return laid(WorkedOut.beside(
                parts -> claims(claim(about, null, null)).apply(parts).odometer(rows)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mileage", "Odometer", "low miles", "kilometers"})
    void aLaterFigureBelowAnEarlierOneContradictsInWhateverOrderTheyWereWritten(String about) {
        ClaimedAndFound back = mileage(
                about,
                figure(61_200, DistanceUnit.MI, "1988-05", false),
                figure(70_100, DistanceUnit.MI, "1984-02-03", false));
        assertThat(back.judgment()).isEqualTo(Judgment.CONTRADICTED);
        assertThat(back.found()).hasSize(2);
        assertThat(back.found().get(0)).contains("Feb 3, 1984", "70100 mi", "papers");
        assertThat(back.found().get(1)).contains("May 1988", "61200 mi");
    }

    @Test
    void risingAndEqualFiguresDoNotContradictNorDoThoseThatMayHaveGoneRound() {
        OdometerFigure early = figure(70_100, DistanceUnit.MI, "1984", false);
        assertThat(mileage("mileage", early, figure(70_100, DistanceUnit.MI, "1988", false))
                        .judgment())
                .isEqualTo(Judgment.OPEN);
        assertThat(mileage("mileage", early, figure(70_101, DistanceUnit.MI, "1988", false))
                        .judgment())
                .isEqualTo(Judgment.OPEN);
        assertThat(mileage("mileage", early, figure(70_099, DistanceUnit.MI, "1988", true))
                        .judgment())
                .isEqualTo(Judgment.OPEN);
        assertThat(mileage("mileage", early, figure(70_099, DistanceUnit.MI, "1988", false))
                        .judgment())
                .isEqualTo(Judgment.CONTRADICTED);
    }

    @Test
    void figuresOfAnotherUnitTakeNoPartAndTheUndatedOneIsTheLatest() {
        OdometerFigure early = figure(70_100, DistanceUnit.MI, "1984", false);
        assertThat(mileage("mileage", early, figure(60_000, DistanceUnit.KM, "1988", false))
                        .judgment())
                .isEqualTo(Judgment.OPEN);
        assertThat(mileage(
                                "mileage",
                                early,
                                figure(90_000, DistanceUnit.KM, "1986", false),
                                figure(80_000, DistanceUnit.MI, "1988", false))
                        .judgment())
                .isEqualTo(Judgment.OPEN);
        ClaimedAndFound undated = mileage("mileage", figure(69_000, DistanceUnit.MI, null, false), early);
        assertThat(undated.judgment()).isEqualTo(Judgment.CONTRADICTED);
        assertThat(undated.found().get(1)).contains("Odometer: 69000");
    }

    @Test
    void whatIsSaidOfOtherThingsLeavesFiguresAlone() {
        assertThat(mileage("brakes", figure(5, DistanceUnit.MI, null, false)).found())
                .isEmpty();
    }

    private static Contradiction clash(String zone) {
        return new Contradiction(
                Contradiction.Kind.NUMBER,
                "engine",
                Optional.ofNullable(zone).map(ZoneId::new),
                List.of(),
                "The engine is of another car.");
    }

    @ParameterizedTest
    @CsvSource({
        "engine, engine, true",
        "engine, hood, false",
        "engine, '', false",
        "'', '', true",
        "'', hood, true",
    })
    void aContradictionOfTheMarksCountsWhereTheClaimReaches(String claimed, String zone, boolean against) {
        for (String about : List.of("matching numbers", "date codes", "Engine")) {
            Findings car = WorkedOut.withContradictions(
                    WorkedOut.beside(claims(claim(about, claimed.isEmpty() ? null : claimed, null))),
                    clash(zone.isEmpty() ? null : zone));
            assertThat(laid(car).judgment()).isEqualTo(against ? Judgment.CONTRADICTED : Judgment.OPEN);
            assertThat(laid(car).found()).hasSize(against ? 1 : 0);
        }
        Findings other = WorkedOut.withContradictions(
                WorkedOut.beside(claims(claim("brakes", claimed.isEmpty() ? null : claimed, null))), clash(null));
        assertThat(laid(other).judgment()).isEqualTo(Judgment.OPEN);
    }

    private static List<String> statementsBeside(Claim claim, Statement... statements) {
        return laid(WorkedOut.beside(
                        parts -> claims(claim).apply(parts).statements(TestVisits.rows(List.of(statements)))))
                .found();
    }

    @Test
    void whatIsStatedOfTheZoneIsLaidBesideTheClaimWhateverItsSeverity() {
        Statement dent = said(HOOD, Condition.DAMAGED, "dent", Severity.NOTE, null);
        assertThat(statementsBeside(claim(null, HOOD, null), dent))
                .singleElement()
                .asString()
                .contains("Hood", "dent");
        assertThat(statementsBeside(claim(null, "roof", null), dent)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"GRAVE, 1", "MAJOR, 1", "MINOR, 0", "NOTE, 0", ", 0"})
    void ofTheWholeCarOnlyMajorAndGraveStatementsAreLaidBeside(Severity severity, int told) {
        Statement rotten = said(HOOD, Condition.DAMAGED, "bent", severity, null);
        assertThat(statementsBeside(claim(null, null, null), rotten)).hasSize(told);
    }

    @ParameterizedTest
    @CsvSource({"hinge, hinge, 1", "hinge, latch, 0", "hinge, , 1", ", latch, 1"})
    void aStatementOnAnotherPartOfTheZoneIsNotLaidBeside(String claimed, String stated, int told) {
        assertThat(statementsBeside(claim(null, HOOD, claimed), said(HOOD, Condition.WORN, "worn", null, stated)))
                .hasSize(told);
    }
}
