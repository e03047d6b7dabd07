package quarterlight.marks.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.marks.Contradiction;
import quarterlight.marks.MarkTeller;
import quarterlight.marks.MarksReport;
import quarterlight.marks.code.DateCandidate;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;

/**
 * Certification labels by 49 CFR 567.4: month and year only, in one of two ways of writing; not later than the first registration; and within
 * about July of the year before to December of the model year that the number says (common practice).
 */
class LabelRuleTest {
    /** A published test number; K in place 10 beside a digit in place 7 is model year 1989. */
    private static final String NUMBER = "1M8GDM9AXKP042788";

    @ParameterizedTest(name = "{0} is the whole month")
    @CsvSource({"June 1970", "JUNE 1970", "Jun 1970", "6/70", "06/70", "6-70"})
    void aLabelSaysItsMonth(String text) {
        JudgedMark label = MarkTeller.built("1970").label(text).first();
        assertThat(label.verdict()).isEqualTo(Verdict.FITS);
        assertThat(label.candidates())
                .extracting(DateCandidate::from, DateCandidate::to)
                .contains(org.assertj.core.groups.Tuple.tuple(LocalDate.of(1970, 6, 1), LocalDate.of(1970, 6, 30)));
        assertThat(label.decoded()).anyMatch(said -> said.contains("49 CFR 567.4"));
    }

    @ParameterizedTest(name = "label {0}, first registered {1}: {2} contradictions")
    @CsvSource({"6/70, 1970-05-31, 1", "6/70, 1970-06-01, 0", "6/70, 1970-06-15, 0", "6/70, 1970-09-03, 0"})
    void aLabelIsNotLaterThanTheFirstRegistration(String text, String sold, int wanted) {
        MarksReport report = MarkTeller.undated()
                .label(text)
                .stage("Registration", MarkKind.TAG, sold, MarkStage.SOLD)
                .report();
        assertThat(report.contradictions()).hasSize(wanted);
        assertThat(report.contradictions()).allSatisfy(c -> {
            assertThat(c.kind()).isEqualTo(Contradiction.Kind.ORDER);
            assertThat(c.sentence()).contains("Jun 1970", "Registration (sold May 31, 1970)");
        });
    }

    @ParameterizedTest(name = "label {0} beside a number of model year 1989: {1} contradictions")
    @CsvSource({"6/88, 1", "7/88, 0", "3/89, 0", "12/89, 0", "1/90, 1"})
    void aLabelFitsTheModelYearOfTheNumber(String text, int wanted) {
        MarksReport report = MarkTeller.undated()
                .mark("Plate", MarkKind.VIN, NUMBER)
                .label(text)
                .report();
        assertThat(report.contradictions()).hasSize(wanted);
    }

    @Test
    void aLabelOnACarBuiltBeforeTheyWereAskedForIsRemarkedOn() {
        assertThat(MarkTeller.built("1969-08").label("8/69").first().decoded())
                .anyMatch(said -> said.contains("Sep 1, 1969"));
        assertThat(MarkTeller.built("1969-09").label("9/69").first().decoded())
                .noneMatch(said -> said.contains("Sep 1, 1969"));
    }

    @Test
    void aLabelOfAPartSaysNothingOfTheBuild() {
        MarksReport report = MarkTeller.undated()
                .mark("Radiator label", MarkKind.LABEL, "2/71")
                .label("3/71")
                .report();
        assertThat(report.contradictions()).isEmpty();
        assertThat(report.order().built().orElseThrow().stretches())
                .anyMatch(days -> days.first().equals(LocalDate.of(1971, 3, 1)));
    }
}
