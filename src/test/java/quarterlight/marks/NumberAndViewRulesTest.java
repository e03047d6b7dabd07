package quarterlight.marks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.Verdict;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.statement.Origin;

/**
 * Each limit of numbers, tires and views from both sides. The check digits and what may stand for an unread letter were worked out by a program of its
 * own in Python, from the tables of 49 CFR 565.15 (values of letters, weights of places, remainder by 11).
 */
class NumberAndViewRulesTest {
    private static final String NUMBER = "1M8GDM9AXKP042788";

    private static JudgedMark vin(MarkTeller car, String text) {
        return car.mark("Plate", MarkKind.VIN, text).first();
    }

    @ParameterizedTest
    @CsvSource({"1980, NOT_APPLICABLE", "1981, TOO_LATE", "1989, FITS"})
    void theRuleHoldsFromItsFirstModelYear(int year, Verdict verdict) {
        assertThat(vin(MarkTeller.modelYear(year), NUMBER).verdict()).isEqualTo(verdict);
    }

    /** Model year 1981 begins with July of the year before, at the earliest. */
    @ParameterizedTest
    @CsvSource({"1980-06, NOT_APPLICABLE", "1980-07, TOO_LATE"})
    void withoutAModelYearTheBuildTells(String built, Verdict verdict) {
        assertThat(vin(MarkTeller.built(built), NUMBER).verdict()).isEqualTo(verdict);
    }

    @Test
    void aShortNumberIsMalformedOnlyWhereTheRuleSurelyHolds() {
        assertThat(vin(MarkTeller.modelYear(1990), "H90C2A10447"))
                .matches(mark -> mark.verdict() == Verdict.MALFORMED)
                .matches(mark -> mark.why().contains("has 11 characters"))
                .matches(mark -> !mark.why().contains("model year is not given"));
        assertThat(vin(MarkTeller.built("1981"), "H90C2A10447").verdict()).isEqualTo(Verdict.MALFORMED);
        assertThat(vin(MarkTeller.built("1980-12"), "H90C2A10447"))
                .matches(mark -> mark.verdict() == Verdict.CANNOT_TELL)
                .matches(mark -> mark.why().contains("model year is not given"));
        assertThat(vin(MarkTeller.undated(), "H90C2A10447").verdict()).isEqualTo(Verdict.CANNOT_TELL);
    }

    @ParameterizedTest
    @CsvSource({
        "0M8GDM9A2KP042788, NOT_APPLICABLE",
        "1M8GDM9AXKP042788, FITS",
        "2M8GDM9A7KP042788, FITS",
        "5M8GDM9A9KP042788, FITS",
        "6M8GDM9A6KP042788, NOT_APPLICABLE",
        "LM8GDM9A4KP042788, FITS",
        "KM8GDM9A7KP042788, NOT_APPLICABLE",
        "?M8GDM9AXKP042788, CANNOT_TELL"
    })
    void theCheckDigitIsAskedForInItsRegionOnly(String text, Verdict verdict) {
        assertThat(vin(MarkTeller.modelYear(1989), text).verdict()).isEqualTo(verdict);
    }

    @Test
    void whatMayStandForOneUnreadLetterIsNamed() {
        assertThat(vin(MarkTeller.modelYear(1989), "1?8GDM9AXKP042788").why())
                .contains("leaves the check digit untested (it holds for 4, D, M, U at place 2); ");
        assertThat(vin(MarkTeller.modelYear(1989), "1M8GDM9A?KP042788").why()).contains("holds for X at place 9");
        assertThat(vin(MarkTeller.modelYear(1989), "1M8GDM9AXKP0427??"))
                .matches(mark -> mark.verdict() == Verdict.CANNOT_TELL)
                .matches(mark -> mark.why().contains("untested; "))
                .matches(mark -> !mark.why().contains("at place"));
        assertThat(vin(MarkTeller.modelYear(1989), "1M8GDM9AXKP042???").why()).contains("3 characters are unread");
        assertThat(vin(MarkTeller.modelYear(1992), "1?8GDM9AXKP042788"))
                .matches(mark -> mark.verdict() == Verdict.UNUSUALLY_EARLY)
                .matches(mark -> !mark.why().contains("untested"));
    }

    @Test
    void aTireSaysHowManyDigitsItHasAndThatALaterOneWasRenewed() {
        JudgedMark old = MarkTeller.built("1995-06")
                .mark("Tire", MarkKind.TIRE, "DOT ABCD EFG 205")
                .first();
        assertThat(old.decoded()).hasSize(2).first().asString().contains("Three digits");
        JudgedMark renewed = MarkTeller.built("1995-06")
                .mark("Tire", MarkKind.TIRE, "DOT ABCD EFG 2015")
                .first();
        assertThat(renewed.decoded()).singleElement().asString().contains("Four digits");
        assertThat(renewed.verdict()).isEqualTo(Verdict.TOO_LATE);
        assertThat(renewed.why()).contains("renewed in service");
        assertThat(old.why()).doesNotContain("renewed in service");
    }

    @Test
    void aReplacedPartIsReadAsADateSinceTheBuild() {
        assertThat(MarkTeller.built("1971-03")
                        .parts(Origin.REPLACED)
                        .mark("Block", MarkKind.CASTING, "1B25")
                        .first()
                        .why())
                .contains("since the build")
                .contains("the nearest of");
        assertThat(MarkTeller.built("1971-03")
                        .visited("1990-01-01")
                        .parts(Origin.REPLACED)
                        .mark("Tag", MarkKind.TAG, "1984-05-03")
                        .first()
                        .why())
                .contains("since the build")
                .doesNotContain("the nearest of");
    }

    /** What differs in less than half of its letters may be the same stamp read otherwise. */
    @ParameterizedTest
    @CsvSource({"1B25, 1B26, 1", "1B25, 1C26, 0", "1B25, 1B2?, 0", "1B25X, 1C26X, 1"})
    void anotherReadingOfTheSameStampIsPointedOut(String first, String second, int odd) {
        JudgedMark mark = MarkTeller.built("1971-03")
                .stage("Block", MarkKind.CASTING, first, MarkStage.CAST)
                .stage("Block", MarkKind.CASTING, second, MarkStage.CAST)
                .first();
        assertThat(mark.why().contains(second)).isEqualTo(odd == 1);
    }

    @Test
    void viewsOfOneStampAreThoseOfOnePartKindAndStage() {
        MarksReport report = MarkTeller.built("1971-03")
                .stage("Block", MarkKind.CASTING, "1B25", MarkStage.CAST)
                .stage(" block ", MarkKind.CASTING, "1b25", MarkStage.CAST)
                .stage("Head", MarkKind.CASTING, "1B25", MarkStage.CAST)
                .stage("Block", MarkKind.STAMP, "1B25", MarkStage.CAST)
                .stage("Block", MarkKind.CASTING, "1B25", MarkStage.MACHINED)
                .report();
        assertThat(report.marks().stream().map(JudgedMark::witnesses)).containsExactly(2, 2, 1, 1, 1);
    }
}
