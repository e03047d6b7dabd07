package quarterlight.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.judge.FeatureVerdict;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.NumberMatch;
import quarterlight.marks.judge.NumberMatch.State;
import quarterlight.marks.judge.Verdict;
import quarterlight.visit.mark.MarkKind;

/** Verdicts by the written rule; days were counted by calendar, not by this program. */
class MarksReportTest {
    /** Built 15 March 1971: the usual lead of 180 days reaches back to 16 September 1970. */
    @ParameterizedTest(name = "casting {0} on a car built {1}: {2}")
    @CsvSource({
        "1C15, 1971-03-15, fits",
        "1C16, 1971-03-15, too late",
        "1C31, 1971-03, fits",
        "1D01, 1971-03, too late",
        "0J16, 1971-03-15, fits",
        "0J05, 1971-03-15, fits",
        "6M31, 1967, fits",
        "7M31, 1967, fits",
        "9K21, 1971-03, unusually early",
        "3F14, 1971-03, too late",
        "XYZ, 1971-03, malformed",
        "1B31, 1971-03, malformed"
    })
    void castingsAreJudgedByWindowAndLead(String text, String built, String verdict) {
        JudgedMark mark =
                MarkTeller.built(built).mark("Block", MarkKind.CASTING, text).first();
        assertThat(mark.verdict().word()).as(mark.why()).isEqualTo(verdict);
    }

    /** 16 September 1970 is 180 days before 15 March 1971, 15 September 181. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"1970-09-16, fits", "1970-09-15, unusually early"})
    void theUsualLeadIsHundredAndEightyDays(String text, String verdict) {
        assertThat(MarkTeller.built("1971-03-15")
                        .mark("Block", MarkKind.CASTING, text)
                        .first()
                        .verdict()
                        .word())
                .isEqualTo(verdict);
    }

    @Test
    void anOwnLeadTakesThePlaceOfTheUsualOne() {
        assertThat(MarkTeller.built("1971-03-15")
                        .lead("Block", "1970-09-15", 181)
                        .first()
                        .verdict())
                .isEqualTo(Verdict.FITS);
        assertThat(MarkTeller.built("1971-03-15")
                        .lead("Block", "1971-03-01", 10)
                        .first()
                        .verdict())
                .isEqualTo(Verdict.UNUSUALLY_EARLY);
    }

    @ParameterizedTest(name = "model year 1971: {0} {1}")
    @CsvSource({
        "1970-07-01, fits",
        "1971-12-31, fits",
        "1972-01-01, too late",
        "1970-01-02, fits",
        "1970-01-01, unusually early"
    })
    void aModelYearIsJulyBeforeToDecember(String text, String verdict) {
        assertThat(MarkTeller.modelYear(1971)
                        .mark("Block", MarkKind.CASTING, text)
                        .first()
                        .verdict()
                        .word())
                .isEqualTo(verdict);
    }

    @Test
    void theCandidateThatFitsComesFirstAndNoneIsLeftOut() {
        JudgedMark mark = MarkTeller.built("1966-03")
                .mark("Block", MarkKind.CASTING, "6B10")
                .first();
        assertThat(mark.candidates().get(0).from()).isEqualTo(LocalDate.of(1966, 2, 10));
        assertThat(mark.candidates())
                .extracting(date -> date.from().getYear())
                .contains(1926, 1936, 1946, 1956, 1966, 1976, 1986, 1996, 2006, 2016, 2026, 2036);
    }

    @Test
    void ofTwoReadingsTheOneThatFitsDecides() {
        JudgedMark mark = MarkTeller.built("1957-02")
                .mark("Block", MarkKind.CASTING, "A257")
                .first();
        assertThat(mark.verdict()).isEqualTo(Verdict.FITS);
        assertThat(mark.candidates())
                .extracting(DateCandidate::from)
                .contains(LocalDate.of(1957, 1, 2), LocalDate.of(1957, 1, 25), LocalDate.of(1967, 1, 25));
    }

    @Test
    void withoutABuildDateNothingCanBeToldAndTheDatesStand() {
        JudgedMark mark =
                MarkTeller.undated().mark("Block", MarkKind.CASTING, "1B18").first();
        assertThat(mark.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(mark.candidates()).isNotEmpty();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "1B1?, fits",
        "3F1?, too late",
        "?B18, cannot tell",
        "????, cannot tell",
        "1?18, cannot tell",
        "1B?8, fits",
        "1Z?8, malformed"
    })
    void unreadLettersDecideOnlyIfTheyMatter(String text, String verdict) {
        JudgedMark mark = MarkTeller.built("1971-03")
                .mark("Block", MarkKind.CASTING, text)
                .first();
        assertThat(mark.verdict().word()).as(mark.why()).isEqualTo(verdict);
    }

    @Test
    void whatOneViewDoesNotShowAnotherMay() {
        MarksReport report = MarkTeller.built("1971-03")
                .mark("Block", MarkKind.CASTING, "?B18")
                .mark("block", MarkKind.CASTING, "1B?8")
                .report();
        assertThat(report.marks()).allSatisfy(mark -> {
            assertThat(mark.text()).isEqualToIgnoringCase("1B18");
            assertThat(mark.witnesses()).isEqualTo(2);
            assertThat(mark.verdict()).isEqualTo(Verdict.FITS);
        });
    }

    @Test
    void viewsThatReadOtherwiseAreNamedAndNotJoined() {
        MarksReport report = MarkTeller.built("1971-03")
                .mark("Block", MarkKind.CASTING, "1B18")
                .mark("Block", MarkKind.CASTING, "1B13")
                .report();
        assertThat(report.marks().get(0).witnesses()).isEqualTo(1);
        assertThat(report.marks().get(0).why()).contains("another row of it reads 1B13");
    }

    @Test
    void aPatternThatIsAskedForIsTheOnlyOne() {
        assertThat(MarkTeller.built("1971-12")
                        .pattern("Tag", "4-12-71", "day-month-year")
                        .first()
                        .candidates())
                .extracting(DateCandidate::from)
                .containsExactly(LocalDate.of(1971, 12, 4));
        assertThat(MarkTeller.built("1971-12")
                        .pattern("Tag", "Q71/4", "Q{yy} {m}")
                        .first()
                        .candidates())
                .extracting(DateCandidate::from)
                .containsExactly(LocalDate.of(1971, 4, 1));
        assertThat(MarkTeller.built("1971-12")
                        .pattern("Tag", "3970010", "none")
                        .first()
                        .verdict())
                .isEqualTo(Verdict.NOT_APPLICABLE);
        JudgedMark unknown =
                MarkTeller.built("1971-12").pattern("Tag", "3970010", "no-such").first();
        assertThat(unknown.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(unknown.why()).contains("'no-such'");
    }

    @Test
    void aMarkIsReadByTheFormThatOtherMarksOfTheVisitBear() {
        MarkTeller visit = MarkTeller.built("1971-03")
                .mark("Alternator", MarkKind.STAMP, "045K1")
                .mark("Starter", MarkKind.STAMP, "045K3")
                .mark("Generator", MarkKind.STAMP, "045X1")
                .mark("Pump", MarkKind.TAG, "4TL");
        assertThat(verdicts(visit.report()))
                .as("no mark bears a form")
                .containsExactly(Verdict.MALFORMED, Verdict.MALFORMED, Verdict.MALFORMED, Verdict.NOT_APPLICABLE);

        MarksReport report = visit.pattern("Engine block", "049K1", "{ddd}K{y}").report();
        assertThat(verdicts(report))
                .containsExactly(
                        Verdict.FITS, Verdict.TOO_LATE, Verdict.MALFORMED, Verdict.NOT_APPLICABLE, Verdict.FITS);
        JudgedMark alternator = report.marks().get(0);
        assertThat(alternator.candidates().get(0).from()).isEqualTo(LocalDate.of(1971, 2, 14));
        assertThat(alternator.why()).contains("{ddd}K{y}", "other marks of this visit");
        assertThat(alternator.decoded()).anyMatch(said -> said.startsWith("By chance alone"));
        assertThat(report.marks().get(4).why()).as("its own").doesNotContain("other marks");
    }

    @Test
    void aFormWithoutAYearOrThatIsNoneIsNoneForOthers() {
        MarkTeller visit = MarkTeller.built("1971-03")
                .mark("Pump", MarkKind.CASTING, "7Z12")
                .pattern("Block", "3Z14", "{m}Z{dd}")
                .pattern("Head", "7Z12", "{zz}Z{y}");
        assertThat(visit.report().marks().get(0).verdict()).isEqualTo(Verdict.MALFORMED);
    }

    private static List<Verdict> verdicts(MarksReport report) {
        return report.marks().stream().map(JudgedMark::verdict).toList();
    }

    @ParameterizedTest(name = "{0} on a car of {1}: {2}")
    @CsvSource({
        "1M8GDM9AXKP042788, 1989, fits",
        "1M8GDM9A0KP042788, 1989, malformed",
        "1M8GDM9AZKP042788, 1989, not applicable",
        "WM8GDM9AXKP042788, 1989, not applicable",
        "1M8GDM9AXKP042788, 1979, not applicable",
        "H71C2A10447, 1971, not applicable",
        "H71C2A10447, 1989, malformed",
        "1M8GDM9AXKPO42788, 1989, malformed",
        "1M8GDM9AXKP04278?, 1989, cannot tell",
        "1M8GDM9A?KP042788, 1989, cannot tell",
        "1M8GDM9AXKP042788, 1992, unusually early",
        "1M8GDM9AXKP042788, 1987, too late",
        "1M8GDM9AXKP0????8, 1989, cannot tell"
    })
    void identityNumbersByTheRegulation(String text, int year, String verdict) {
        JudgedMark mark =
                MarkTeller.modelYear(year).mark("Plate", MarkKind.VIN, text).first();
        assertThat(mark.verdict().word()).as(mark.why()).isEqualTo(verdict);
    }

    @Test
    void aNumberOfAnotherModelYearIsAContradictionThoughItsDatesTouch() {
        MarksReport report = MarkTeller.modelYear(1990)
                .mark("Plate", MarkKind.VIN, "1M8GDM9AXKP042788")
                .report();
        assertThat(report.marks().get(0).verdict()).isEqualTo(Verdict.FITS);
        assertThat(report.contradictions()).singleElement().satisfies(contradiction -> {
            assertThat(contradiction.kind()).isEqualTo(Contradiction.Kind.NUMBER);
            assertThat(contradiction.sentence()).contains("1989", "not 1990 as claimed");
        });
    }

    @ParameterizedTest(name = "{0} against {1}: {2}")
    @CsvSource({
        "H71C2A10447, H71C2A10447, AGREES",
        "H71 C2A-10447*, h71c2a10447, AGREES",
        "H71C2A1?447, H71C2A10447, OPEN",
        "H71C2A1?446, H71C2A10447, DIFFERS",
        "H71C2A1044, H71C2A10447, DIFFERS"
    })
    void numbersAreComparedLetterByLetter(String text, String expected, State state) {
        MarksReport report = MarkTeller.built("1971-03")
                .expected("Stamp", MarkKind.STAMP, text, expected)
                .report();
        assertThat(report.marks().get(0).matches())
                .singleElement()
                .extracting(NumberMatch::state)
                .isEqualTo(state);
        assertThat(report.marks().get(0).verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
        assertThat(report.contradictions()).hasSize(state == State.DIFFERS ? 1 : 0);
    }

    @Test
    void plateAndPapersMustAgree() {
        MarksReport report = MarkTeller.built("1971-03")
                .mark("Plate", MarkKind.VIN, "H71C2A10447")
                .mark("Title", MarkKind.VIN, "H71C2A10474")
                .report();
        assertThat(report.contradictions()).singleElement().satisfies(contradiction -> {
            assertThat(contradiction.what()).isEqualTo("Title");
            assertThat(contradiction.sentence()).contains("differs from Plate", "places 10, 11");
        });
    }

    @Test
    void aTireThatIsTooYoungIsNoContradiction() {
        MarksReport report = MarkTeller.built("1971-03")
                .mark("Tire", MarkKind.TIRE, "DOT KX7L HVR 2319")
                .report();
        assertThat(report.marks().get(0).verdict()).isEqualTo(Verdict.TOO_LATE);
        assertThat(report.contradictions()).isEmpty();
        assertThat(MarkTeller.built("1971-03")
                        .mark("Tire", MarkKind.TIRE, "5309")
                        .first()
                        .verdict())
                .isEqualTo(Verdict.MALFORMED);
    }

    @Test
    void glassIsDecodedAsFarAsPublishedAndNoFarther() {
        JudgedMark pane = MarkTeller.built("1971-03")
                .mark("Pane", MarkKind.GLASS, "AS2 M 41 DOT 19 ..7")
                .first();
        assertThat(pane.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(pane.candidates()).isEmpty();
        assertThat(String.join(" ", pane.decoded())).contains("AS2", "70 %", "M41", "DOT 19");
        assertThat(MarkTeller.built("1990")
                        .mark("Pane", MarkKind.GLASS, "E1 43R-00123")
                        .first()
                        .decoded())
                .containsExactly("E1: approved in Germany", "43R-00123: approval under UN Regulation No. 43");
    }

    @Test
    void featuresOfAnotherBuildAreNamedWithWhatWouldBelong() {
        MarksReport report = MarkTeller.built("1971-03")
                .feature("Recessed reflector", "1972-08", "1974-07", true)
                .feature("Flat reflector", "1970-08", "1972-07", false)
                .feature("Late bumper", "1972-08", "1974-07", false)
                .report();
        assertThat(report.features())
                .extracting(feature -> feature.verdict().word())
                .containsExactly("does not belong", "missing", "rightly absent");
        assertThat(report.features().get(0).instead()).containsExactly("Flat reflector");
        assertThat(report.contradictions()).extracting(Contradiction::what).isEqualTo(List.of("Recessed reflector"));
    }

    @Test
    void aFeatureIsMissingOnlyIfEveryDayOfTheWindowAsksForIt() {
        assertThat(MarkTeller.modelYear(1971)
                        .feature("Flat reflector", "1971-01", "1972-07", false)
                        .report()
                        .features()
                        .get(0)
                        .verdict())
                .isEqualTo(FeatureVerdict.CANNOT_TELL);
    }
}
