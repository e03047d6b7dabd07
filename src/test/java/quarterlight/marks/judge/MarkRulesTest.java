package quarterlight.marks.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.marks.code.DateCandidate;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.pin.RecordId;

/** Limits of the rules that docs/methods/dates.md writes out, each from both sides; days counted by calendar. */
class MarkRulesTest {
    private static final BuildWindow MARCH = new BuildWindow(LocalDate.of(1971, 3, 1), LocalDate.of(1971, 3, 31));

    private static DateCandidate days(String from, String to) {
        return new DateCandidate(LocalDate.parse(from), LocalDate.parse(to), "test");
    }

    private static DateCandidate day(String day) {
        return days(day, day);
    }

    private static Mark mark(MarkKind kind, MarkStage stage, Integer lead) {
        return new Mark(
                "Block",
                kind,
                "X",
                Optional.ofNullable(stage),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(lead),
                Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({
        "1971-02-27, 2",
        "1971-02-28, 1",
        "1971-03-01, 0",
        "1971-03-31, 0",
        "1971-04-01, 1",
        "1971-04-03, 3",
    })
    void theDistanceIsCountedFromTheNearestDayOfTheWindow(String day, long distance) {
        assertThat(new WindowRule(MARCH, 180, 0).distanceDays(day(day))).isEqualTo(distance);
    }

    @Test
    void whatFitsComesFirstThenTheNearerThenTheEarlier() {
        WindowRule rule = new WindowRule(MARCH, 180, 0);
        DateCandidate late = day("1971-04-02");
        DateCandidate inside = day("1971-03-09");
        DateCandidate lead = day("1970-12-01");
        DateCandidate early = day("1970-08-30");
        DateCandidate farther = day("1975-01-01");
        assertThat(rule.ranked(List.of(farther, early, late, lead, inside)))
                .containsExactly(inside, lead, late, early, farther);
        WindowRule bare = new WindowRule(MARCH, 0, 0);
        assertThat(bare.ranked(List.of(late, day("1971-02-27")))).containsExactly(day("1971-02-27"), late);
        assertThat(bare.verdict(List.of(late, day("1971-02-27")))).isEqualTo(Verdict.UNUSUALLY_EARLY);
        assertThat(bare.verdict(List.of(day("1971-04-01"), day("1971-02-27")))).isEqualTo(Verdict.TOO_LATE);
    }

    @Test
    void theSentenceSaysWhereTheDateLies() {
        WindowRule rule = new WindowRule(MARCH, 180, 0);
        assertThat(rule.sentence(days("1971-02-15", "1971-03-01"))).contains("lies in the build window (Mar 1971)");
        assertThat(rule.sentence(day("1971-02-28"))).contains("1 day before", "within the usual 180 days");
        assertThat(rule.sentence(day("1970-08-31"))).contains("6 months before", "more than the usual 180 days");
        assertThat(rule.sentence(day("1971-04-01"))).endsWith("1 day after the build window (Mar 1971)");
        assertThat(new WindowRule(MARCH, 0, 30).sentence(day("1971-04-01"))).contains("within the usual 30 days");
    }

    @ParameterizedTest
    @CsvSource({"1, 1 day", "90, 90 days", "91, 3 months", "1100, 36 months", "1101, 3 years", "1644, 5 years"})
    void spansAreSaidInTheUnitThatReadsBest(long days, String said) {
        assertThat(DateText.span(days)).isEqualTo(said);
    }

    /** 180 days of lead and of shipping, two years to the sale, a fortnight for a stamp of the build. */
    @Test
    void theUsualLeadsAreThoseOfThePage() {
        UsualLeads leads = UsualLeads.V1;
        assertThat(leads.before(mark(MarkKind.CASTING, null, null))).isEqualTo(180);
        assertThat(leads.before(mark(MarkKind.CASTING, MarkStage.CAST, 30))).isEqualTo(30);
        assertThat(leads.before(mark(MarkKind.TAG, MarkStage.SHIPPED, 30))).isZero();
        assertThat(leads.before(mark(MarkKind.TAG, MarkStage.SOLD, null))).isZero();
        assertThat(leads.after(mark(MarkKind.TAG, MarkStage.SHIPPED, null))).isEqualTo(180);
        assertThat(leads.after(mark(MarkKind.TAG, MarkStage.SOLD, null))).isEqualTo(730);
        assertThat(leads.after(mark(MarkKind.TAG, MarkStage.SOLD, 30))).isEqualTo(30);
        assertThat(leads.after(mark(MarkKind.TAG, MarkStage.BUILT, 30))).isZero();
        assertThat(leads.after(mark(MarkKind.TAG, null, null))).isZero();
        assertThat(leads.builtTolerance(mark(MarkKind.STAMP, MarkStage.BUILT, null)))
                .isEqualTo(14);
        assertThat(leads.builtTolerance(mark(MarkKind.LABEL, MarkStage.BUILT, null)))
                .isZero();
        assertThat(leads.builtTolerance(mark(MarkKind.VIN, MarkStage.BUILT, null)))
                .isZero();
    }

    @Test
    void numbersAreComparedPlaceByPlace() {
        NumberMatch agrees = NumberMatch.of("f22-09 a*", "the plate", "F2209A");
        assertThat(agrees.state()).isEqualTo(NumberMatch.State.AGREES);
        assertThat(agrees.sentence()).isEqualTo("agrees with the plate letter by letter");
        NumberMatch open = NumberMatch.of("F?209A", "the plate", "F2209?");
        assertThat(open.state()).isEqualTo(NumberMatch.State.OPEN);
        assertThat(open.sentence()).contains("places 2, 6 unread", "stays open");
        assertThat(NumberMatch.of("F?209A", "the plate", "F2209A").sentence()).contains("place 2 unread");
        NumberMatch longer = NumberMatch.of("F2208A1", "the plate", "F2209A");
        assertThat(longer.state()).isEqualTo(NumberMatch.State.DIFFERS);
        assertThat(longer.differing()).containsExactly(5, 7);
        assertThat(longer.sentence()).contains("places 5, 7", "read F2208A1", "not F2209A");
        assertThat(NumberMatch.of("F2209", "the plate", "F2209A").differing()).containsExactly(6);
    }

    private static Feature feature(String name, String from, String to, Boolean fitted, String zone) {
        return new Feature(
                name,
                PartialDate.parse(from).orElseThrow(),
                PartialDate.parse(to).orElseThrow(),
                Optional.ofNullable(fitted),
                Optional.ofNullable(zone).map(ZoneId::new),
                Optional.empty());
    }

    private static JudgedFeature judged(Feature... features) {
        return JudgedFeature.of(List.of(features), Optional.of(MARCH)).get(0);
    }

    /** The window is March 1971: one day of it is enough to belong, all of it is needed to be missing. */
    @ParameterizedTest
    @CsvSource({
        "1971-03-31, 1975, true, BELONGS",
        "1971-04-01, 1975, true, DOES_NOT_BELONG",
        "1968, 1971-03-01, true, BELONGS",
        "1968, 1971-02-28, true, DOES_NOT_BELONG",
        "1971-04-01, 1975, false, RIGHTLY_ABSENT",
        "1971-03-01, 1971-03-31, false, MISSING",
        "1971-03-02, 1971-03-31, false, CANNOT_TELL",
        "1971-03-01, 1971-03-30, false, CANNOT_TELL",
        "1971-03-01, 1971-03-31, , CANNOT_TELL",
    })
    void aFeatureIsHeldAgainstTheBuildWindow(String from, String to, Boolean fitted, FeatureVerdict verdict) {
        JudgedFeature feature = judged(feature("lamp", from, to, fitted, null));
        assertThat(feature.verdict()).isEqualTo(verdict);
        assertThat(feature.why()).contains("belongs to cars built");
        assertThat(feature.why().contains("partly outside"))
                .isEqualTo(verdict == FeatureVerdict.CANNOT_TELL && fitted != null);
        assertThat(JudgedFeature.of(List.of(feature("lamp", from, to, true, null)), Optional.empty())
                        .get(0)
                        .verdict())
                .isEqualTo(FeatureVerdict.CANNOT_TELL);
    }

    @Test
    void inPlaceOfOneThatDoesNotBelongStandsWhatWouldInTheSameZone() {
        Feature wrong = feature("round lamp", "1973", "1975", true, "hood");
        Feature right = feature("square lamp", "1970", "1972", false, "hood");
        Feature elsewhere = feature("long lamp", "1970", "1972", false, "roof");
        Feature later = feature("flat lamp", "1974", "1975", false, "hood");
        assertThat(judged(wrong, right, elsewhere, later).instead()).containsExactly("square lamp");
        Feature nowhere = feature("round lamp", "1973", "1975", true, null);
        assertThat(judged(nowhere, feature("square lamp", "1970", "1972", false, null))
                        .instead())
                .isEmpty();
        assertThat(judged(right, wrong).instead()).isEmpty();
    }

    private static boolean isJudged(Verdict verdict, MarkKind kind, boolean compared) {
        return new JudgedMark(
                        new RecordId(1),
                        mark(kind, null, null),
                        "X",
                        List.of(),
                        verdict,
                        "Because.",
                        List.of(),
                        compared ? List.of(NumberMatch.of("A", "b", "A")) : List.of(),
                        1)
                .isJudged();
    }

    @Test
    void aMarkIsJudgedByItsDateItsRuleOrANumberBesideIt() {
        for (Verdict verdict : List.of(Verdict.FITS, Verdict.TOO_LATE, Verdict.UNUSUALLY_EARLY)) {
            assertThat(isJudged(verdict, MarkKind.STAMP, false)).isTrue();
        }
        assertThat(isJudged(Verdict.MALFORMED, MarkKind.VIN, false)).isTrue();
        assertThat(isJudged(Verdict.MALFORMED, MarkKind.STAMP, false)).isFalse();
        for (Verdict verdict : List.of(Verdict.MALFORMED, Verdict.CANNOT_TELL, Verdict.NOT_APPLICABLE)) {
            assertThat(isJudged(verdict, MarkKind.STAMP, true)).isTrue();
        }
        assertThat(isJudged(Verdict.CANNOT_TELL, MarkKind.VIN, false)).isFalse();
        assertThat(isJudged(Verdict.NOT_APPLICABLE, MarkKind.VIN, false)).isFalse();
    }

    @Test
    void aBuildWindowRunsForward() {
        LocalDate day = LocalDate.of(1971, 3, 15);
        assertThat(new BuildWindow(day, day).last()).isEqualTo(day);
        assertThatThrownBy(() -> new BuildWindow(day, day.minusDays(1))).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "door-jamb-front-left, true",
        "a-pillar-left, true",
        "b-pillar-right, true",
        "dash, true",
        "steering-column, true",
        "cab-corner-left, true",
        "engine, false",
        ", true",
    })
    void aLabelOfTheBuildStandsAtAPlaceForIt(String zone, boolean build) {
        Mark label = new Mark(
                "Label",
                MarkKind.LABEL,
                "03/71",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(zone).map(ZoneId::new),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(LabelRule.saysBuild(label)).isEqualTo(build);
    }
}
