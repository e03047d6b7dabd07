package quarterlight.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import quarterlight.marks.judge.Verdict;
import quarterlight.marks.order.DaySet;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;

class DateOrderTest {
    @Test
    void aBlockCastAfterItsEngineWasAssembledIsNamedThoughEachFitsTheCar() {
        MarksReport report = MarkTeller.built("1971-03")
                .stage("Engine assembly", MarkKind.STAMP, "1B10", MarkStage.ASSEMBLED)
                .stage("Engine block", MarkKind.CASTING, "1B25", MarkStage.CAST)
                .report();
        assertThat(report.marks()).allMatch(mark -> mark.verdict() == Verdict.FITS);
        assertThat(report.contradictions()).singleElement().satisfies(contradiction -> {
            assertThat(contradiction.kind()).isEqualTo(Contradiction.Kind.ORDER);
            assertThat(contradiction.sentence())
                    .isEqualTo("Engine block (cast Feb 25, 1971) comes 15 days after Engine assembly"
                            + " (assembled Feb 10, 1971), not before it.");
        });
        assertThat(report.marks()).allMatch(mark -> mark.why().contains("comes 15 days after"));
    }

    @Test
    void theRightOrderIsNoContradiction() {
        MarksReport report = MarkTeller.built("1971-03")
                .stage("Engine block", MarkKind.CASTING, "1B10", MarkStage.CAST)
                .stage("Engine block", MarkKind.STAMP, "1B16", MarkStage.MACHINED)
                .stage("Engine assembly", MarkKind.STAMP, "1B25", MarkStage.ASSEMBLED)
                .stage("Engine assembly", MarkKind.TAG, "1C02", MarkStage.FITTED)
                .stage("Door label", MarkKind.LABEL, "03/71", MarkStage.BUILT)
                .stage("Delivery sheet", MarkKind.TAG, "1971-03-29", MarkStage.SHIPPED)
                .stage("Title", MarkKind.TAG, "1971-05-03", MarkStage.SOLD)
                .report();
        assertThat(report.contradictions()).isEmpty();
        DaySet built = report.order().built().orElseThrow();
        assertThat(built.stretches()).singleElement().satisfies(days -> {
            assertThat(days.first()).isEqualTo(LocalDate.of(1971, 3, 2));
            assertThat(days.last()).isEqualTo(LocalDate.of(1971, 3, 29));
        });
    }

    @Test
    void aLabelNarrowsTheBuildSoThatALaterPartShows() {
        MarksReport report = MarkTeller.modelYear(1971)
                .stage("Door label", MarkKind.LABEL, "03/71", MarkStage.BUILT)
                .stage("Alternator", MarkKind.STAMP, "1F14", MarkStage.ASSEMBLED)
                .report();
        assertThat(report.marks()).allMatch(mark -> mark.verdict() == Verdict.FITS);
        assertThat(report.contradictions()).singleElement().satisfies(contradiction -> assertThat(
                        contradiction.sentence())
                .contains("Alternator (assembled Jun 14, 1971)", "after the car's build (Mar 1971)"));
    }

    @Test
    void soldBeforeItWasBuiltIsUnusuallyEarlyAndLongAfterTooLate() {
        assertThat(MarkTeller.built("1971-03")
                        .stage("Title", MarkKind.TAG, "1971-02-20", MarkStage.SOLD)
                        .first()
                        .verdict())
                .isEqualTo(Verdict.UNUSUALLY_EARLY);
        assertThat(MarkTeller.built("1971-03")
                        .stage("Title", MarkKind.TAG, "1972-02-20", MarkStage.SOLD)
                        .first()
                        .verdict())
                .isEqualTo(Verdict.FITS);
        assertThat(MarkTeller.built("1971-03")
                        .stage("Title", MarkKind.TAG, "1975-02-20", MarkStage.SOLD)
                        .first()
                        .verdict())
                .isEqualTo(Verdict.TOO_LATE);
    }

    @Test
    void withoutABuildDateTheDatesTogetherTellIt() {
        MarksReport report = MarkTeller.undated()
                .stage("Door label", MarkKind.LABEL, "APRIL 1971", MarkStage.BUILT)
                .stage("Block", MarkKind.CASTING, "1B18", MarkStage.CAST)
                .report();
        DaySet built = report.order().built().orElseThrow();
        assertThat(built.stretches().get(0).first()).isEqualTo(LocalDate.of(1971, 4, 1));
        assertThat(report.order().left().get(report.marks().get(1).row()).stretches())
                .singleElement()
                .satisfies(days -> assertThat(days.first()).isEqualTo(LocalDate.of(1971, 2, 18)));
    }

    /** The next stage of the same part, in whichever order the marks were read; a later one and another part's do not count. */
    @Test
    void aStageComesBeforeTheNextOfItsOwnPart() {
        MarksReport report = MarkTeller.built("1971-03")
                .stage("Engine block", MarkKind.TAG, "1971-03-05", MarkStage.FITTED)
                .stage("Engine block", MarkKind.CASTING, "1B25", MarkStage.CAST)
                .stage("Engine block", MarkKind.STAMP, "1B20", MarkStage.MACHINED)
                .report();
        assertThat(report.contradictions())
                .extracting(Contradiction::sentence)
                .containsExactly("Engine block (cast Feb 25, 1971) comes 5 days after Engine block"
                        + " (machined Feb 20, 1971), not before it.");
        assertThat(MarkTeller.built("1971-03")
                        .stage("Engine block", MarkKind.CASTING, "1B25", MarkStage.CAST)
                        .stage("Cylinder head", MarkKind.STAMP, "1B20", MarkStage.MACHINED)
                        .report()
                        .contradictions())
                .isEmpty();
    }

    /** A casting waits 180 days at most for its next stage, the day itself still fits. */
    @Test
    void whatLiesTooLongBeforeItsNextStageIsNamedWithTheDays() {
        assertThat(MarkTeller.undated()
                        .stage("Block", MarkKind.TAG, "1970-09-02", MarkStage.CAST)
                        .stage("Block", MarkKind.TAG, "1971-03-01", MarkStage.MACHINED)
                        .report()
                        .contradictions())
                .isEmpty();
        assertThat(MarkTeller.undated()
                        .stage("Block", MarkKind.TAG, "1970-09-01", MarkStage.CAST)
                        .stage("Block", MarkKind.TAG, "1971-03-01", MarkStage.MACHINED)
                        .report()
                        .contradictions())
                .singleElement()
                .satisfies(found -> assertThat(found.sentence())
                        .contains("Sep 1, 1970", "comes 6 months before", "Mar 1, 1971", "the usual 180 days"));
    }
}
