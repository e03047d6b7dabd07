package quarterlight.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.Verdict;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.statement.Origin;

/** Marks as inspectors meet them: labels of two numbers, stamps without a year, dates among words, tags that are no dates. */
class DatesAsWrittenTest {
    @ParameterizedTest(name = "a label {0} on a car built in {1} begins {2}")
    @CsvSource({
        "03/73, 1973-03, 1973-03-01",
        "3-73, 1973-03, 1973-03-01",
        "03 1973, 1973-03, 1973-03-01",
        "12/72, 1973-03, 1972-12-01",
        "73/03, 1973-03, 1973-03-01",
        "1973-03, 1973-03, 1973-03-01",
    })
    void aLabelsTwoNumbersAreMonthAndYear(String text, String built, LocalDate from) {
        JudgedMark label = MarkTeller.built(built).label(text).first();
        assertThat(label.verdict()).isEqualTo(Verdict.FITS);
        assertThat(label.candidates()).allSatisfy(date -> {
            assertThat(date.from().getDayOfMonth()).isEqualTo(1);
            assertThat(date.to()).isEqualTo(date.from().plusMonths(1).minusDays(1));
        });
        assertThat(label.candidates().get(0).from()).isEqualTo(from);
    }

    @ParameterizedTest(name = "a label {0} is {1}")
    @CsvSource({"12/66, FITS", "13/66, MALFORMED", "00/66, MALFORMED", "01/66, FITS"})
    void aLabelOfNoMonthIsMalformed(String text, Verdict wanted) {
        assertThat(MarkTeller.built("1966").label(text).first().verdict()).isEqualTo(wanted);
    }

    @ParameterizedTest(name = "a {0} that says {1} is {2}")
    @CsvSource({
        "TAG, 84-3310-2, NOT_APPLICABLE",
        "TAG, 1B09, FITS",
        "CASTING, 84-3310-2, MALFORMED",
        "LABEL, NOT A DATE, MALFORMED",
    })
    void aTagWithoutADateIsANumber(MarkKind kind, String text, Verdict wanted) {
        JudgedMark mark =
                MarkTeller.built("1971-03").mark("Heater box", kind, text).first();
        assertThat(mark.verdict()).isEqualTo(wanted);
        if (wanted == Verdict.NOT_APPLICABLE) {
            assertThat(mark.why()).isEqualTo("It is a number and bears no date.");
        }
    }

    @ParameterizedTest(name = "{0} on a car built in {1} is {2}, read as {3}")
    @CsvSource({
        "0412B, 1967-04, FITS, 1967-04-12",
        "T0412CB, 1967-04-20, FITS, 1967-04-12",
        "4-12 B, 1967-04-20, FITS, 1967-04-12",
        "1220A, 1967-04-20, FITS, 1966-12-20",
        "0501A, 1967-04-20, TOO_LATE, 1967-05-01",
        "0925A, 1967-04-20, TOO_LATE, 1967-09-25",
    })
    void anAssemblyStampWithoutAYearIsResolvedFromTheBuild(String text, String built, Verdict wanted, LocalDate day) {
        JudgedMark stamp = MarkTeller.built(built)
                .stage("Engine", MarkKind.STAMP, text, MarkStage.ASSEMBLED)
                .first();
        assertThat(stamp.verdict()).isEqualTo(wanted);
        assertThat(stamp.candidates().get(0).from()).isEqualTo(day);
        assertThat(stamp.decoded()).anyMatch(said -> said.startsWith("It bears no year"));
    }

    @Test
    void aStampWithoutAYearNeedsABuild() {
        JudgedMark stamp =
                MarkTeller.undated().mark("Engine", MarkKind.STAMP, "0412B").first();
        assertThat(stamp.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(stamp.why()).contains("without a year", "neither a build date nor a model year");
    }

    @Test
    void aDayThatNoCalendarHasIsNoStampOfADay() {
        assertThat(MarkTeller.built("1967-04")
                        .mark("Engine", MarkKind.STAMP, "0431B")
                        .first()
                        .verdict())
                .isEqualTo(Verdict.MALFORMED);
    }

    @ParameterizedTest(name = "{0} says {1} to {2}")
    @CsvSource({
        "RECONDITIONED 3/81, 1981-03-01, 1981-03-31",
        "Rebuilt APR 81 by the works, 1981-04-01, 1981-04-30",
        "DATE 1B18, 1971-02-18, 1971-02-18",
    })
    void aDateAmongWordsIsRead(String text, LocalDate from, LocalDate to) {
        JudgedMark mark =
                MarkTeller.built("1971-03").mark("Starter", MarkKind.TAG, text).first();
        assertThat(mark.candidates().get(0).from()).isEqualTo(from);
        assertThat(mark.candidates().get(0).to()).isEqualTo(to);
        assertThat(mark.decoded()).anyMatch(said -> said.startsWith("Beside the date stands: "));
    }

    @Test
    void aDateOfReworkIsNotOneOfMaking() {
        MarkTeller car = MarkTeller.built("1971-03");
        assertThat(car.mark("Starter", MarkKind.TAG, "RECONDITIONED 3/81")
                        .first()
                        .why())
                .endsWith("it says when the part was reworked, not when it was made.");
        assertThat(MarkTeller.built("1971-03")
                        .mark("Starter", MarkKind.TAG, "PLANT 3/81")
                        .first()
                        .why())
                .doesNotContain("reworked");
    }

    @Test
    void aPartNumberBesideWordsIsNoDate() {
        assertThat(MarkTeller.built("1971-03")
                        .mark("Starter", MarkKind.TAG, "MODEL 7115")
                        .first()
                        .verdict())
                .isEqualTo(Verdict.NOT_APPLICABLE);
    }

    @ParameterizedTest(name = "a tire {0} seen on 2026-04-18 has {1} candidates")
    @CsvSource({"DOT KX7L HVR 1526, 1", "DOT KX7L HVR 1626, 0", "DOT KX7L HVR 2399, 0", "DOT KX7L HVR 317, 3"})
    void aTireOfTheFutureIsNoCandidate(String text, int candidates) {
        JudgedMark tire = MarkTeller.built("1971-03")
                .visited("2026-04-18")
                .mark("Tire", MarkKind.TIRE, text)
                .first();
        assertThat(tire.candidates()).hasSize(candidates);
        if (candidates == 0) {
            assertThat(tire.verdict()).isEqualTo(Verdict.MALFORMED);
            assertThat(tire.why()).contains("lies after the visit");
        }
    }

    @Test
    void aNumberThatDiffersIsSaidWithItsPlaceAndBothNumbers() {
        JudgedMark stamp = MarkTeller.built("1971-03")
                .expected("Body stamp", MarkKind.STAMP, "H71C9A10447", "H71C2A10447")
                .first();
        assertThat(stamp.why()).contains("differs from what is expected at place 5: read H71C9A10447, not H71C2A10447");
    }

    @ParameterizedTest(name = "model year 1989 on a car built {0} is {1}")
    @CsvSource({
        "1988-06-30, TOO_LATE",
        "1988-07-01, FITS",
        "1989-12-31, FITS",
        "1990-01-01, UNUSUALLY_EARLY",
        "1990-06-01, UNUSUALLY_EARLY",
    })
    void aModelYearTakesNoPartsLead(String built, Verdict wanted) {
        for (MarkKind kind : List.of(MarkKind.VIN, MarkKind.PLATE)) {
            assertThat(MarkTeller.built(built)
                            .mark("Plate", kind, "1M8GDM9AXKP042788")
                            .first()
                            .verdict())
                    .isEqualTo(wanted);
        }
    }

    @ParameterizedTest(name = "shipped on {0}, sold on {1}: {2} contradictions")
    @CsvSource({"1971-04-20, 1971-04-19, 1", "1971-04-20, 1971-04-20, 0", "1971-04-20, 1971-05-02, 0"})
    void aSaleBeforeShippingIsNamed(String shipped, String sold, int wanted) {
        MarksReport report = MarkTeller.built("1971-03")
                .stage("Invoice", MarkKind.TAG, shipped, MarkStage.SHIPPED)
                .stage("Title", MarkKind.TAG, sold, MarkStage.SOLD)
                .report();
        assertThat(report.contradictions()).hasSize(wanted);
        assertThat(report.contradictions())
                .allSatisfy(found -> assertThat(found.sentence()).contains("Invoice (shipped", "Title (sold"));
    }

    @ParameterizedTest(name = "{0} on a part that is {1} begins {2} and is {3}")
    @CsvSource({
        "4021, REPLACED, 2021-10-04, TOO_LATE",
        "4021, ORIGINAL, 1940-05-20, UNUSUALLY_EARLY",
        "1B18, REPLACED, 1981-02-18, TOO_LATE",
        "1B18, ORIGINAL, 1971-02-18, FITS",
        "7115, REPLACED, 1971-04-12, TOO_LATE",
    })
    void aReplacedPartIsReadByTheDecadesSinceTheBuild(String text, Origin origin, LocalDate from, Verdict wanted) {
        MarksReport report = MarkTeller.built("1971-03")
                .visited("2026-04-18")
                .parts(origin)
                .mark("Alternator", MarkKind.STAMP, text)
                .report();
        JudgedMark mark = report.marks().get(0);
        assertThat(mark.candidates().get(0).from()).isEqualTo(from);
        assertThat(mark.verdict()).isEqualTo(wanted);
        assertThat(report.contradictions()).hasSize(wanted == Verdict.UNUSUALLY_EARLY ? 1 : 0);
    }

    @Test
    void aReplacedPartIsNotFromAfterTheVisit() {
        JudgedMark mark = MarkTeller.built("1971-03")
                .visited("2021-10-03")
                .parts(Origin.REPLACED)
                .mark("Alternator", MarkKind.STAMP, "4021")
                .first();
        assertThat(mark.verdict()).isEqualTo(Verdict.UNUSUALLY_EARLY);
    }

    @ParameterizedTest(name = "a paper that says {0} is {1}")
    @CsvSource({"H71C2A10447, NOT_APPLICABLE", "4/71, TOO_LATE", "3/71, FITS"})
    void aNumberOnPapersIsNoDate(String text, Verdict wanted) {
        assertThat(MarkTeller.built("1971-03")
                        .mark("Title", MarkKind.PAPER, text)
                        .first()
                        .verdict())
                .isEqualTo(wanted);
    }

    @Test
    void aNumberOnPapersIsComparedWithWhatItShouldSay() {
        MarksReport report = MarkTeller.built("1971-03")
                .expected("Registration", MarkKind.PAPER, "H71C2A10474", "H71C2A10447")
                .report();
        assertThat(report.contradictions()).singleElement().satisfies(found -> assertThat(found.sentence())
                .contains("places 10, 11: read H71C2A10474, not H71C2A10447"));
    }
}
