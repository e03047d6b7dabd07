package quarterlight.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.Chances;
import quarterlight.finish.history.CountDistribution;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.marks.Contradiction;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairAdvice;
import quarterlight.rust.need.RepairNeed;
import quarterlight.table.ZoneTable;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.spot.Spot;
import quarterlight.thickness.spot.SpotKind;
import quarterlight.units.Area;
import quarterlight.units.ThicknessText;
import quarterlight.units.ThicknessUnit;

/** Each limit of the table "Two in detail" of docs/methods/compare.md from both sides. */
class ContrastRulesTest {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ThicknessText UM = new ThicknessText(ThicknessUnit.UM);

    /** What is known of the hood of one car. */
    private record Hood(
            Optional<ZoneThickness> thickness,
            double level,
            boolean failed,
            Optional<ZoneHistory> history,
            boolean own,
            Optional<ZoneRust> rust,
            int judged,
            List<Contradiction> against) {
        static final Hood BARE =
                new Hood(Optional.empty(), 100, false, Optional.empty(), true, Optional.empty(), 0, List.of());

        Hood spots(double... um) {
            List<Spot> spots = DoubleStream.of(um)
                    .mapToObj(one -> new Spot(Optional.empty(), SpotKind.VALUE, OptionalDouble.of(one), List.of()))
                    .toList();
            OptionalDouble none = OptionalDouble.empty();
            return new Hood(
                    Optional.of(new ZoneThickness(
                            HOOD, true, um.length, 0, 0, spots, none, none, none, none, none, none, none, none,
                            List.of())),
                    level,
                    failed,
                    history,
                    own,
                    rust,
                    judged,
                    against);
        }

        Hood likely(double refinished, double repaired, double low, double high) {
            return new Hood(
                    thickness,
                    level,
                    failed,
                    Optional.of(new ZoneHistory(
                            HOOD,
                            true,
                            new Chances(1 - refinished, refinished - repaired, 0, repaired),
                            0,
                            low,
                            high,
                            0,
                            0,
                            List.of(),
                            List.of(),
                            Map.of(),
                            Optional.empty())),
                    own,
                    rust,
                    judged,
                    against);
        }

        /** Rust of this share of a zone of 100,000 mm2. */
        Hood rusted(double percent, int grade, double sdMm2, RepairNeed need) {
            ZoneRust found = new ZoneRust(
                    ZoneTable.load().get(HOOD),
                    true,
                    Optional.of(new Area(percent * 1000)),
                    OptionalDouble.of(sdMm2),
                    Optional.of(new Area(100_000)),
                    OptionalDouble.of(percent),
                    OptionalInt.of(grade),
                    Optional.empty(),
                    OptionalInt.empty(),
                    OptionalInt.of(0),
                    Optional.empty(),
                    new RepairAdvice(Optional.ofNullable(need), List.of(), List.of()),
                    List.of(),
                    List.of());
            return new Hood(thickness, level, failed, history, own, Optional.of(found), judged, against);
        }

        Hood dated(int count, int contradictions) {
            Contradiction one =
                    new Contradiction(Contradiction.Kind.DATE, "block", Optional.of(HOOD), List.of(), "Too late.");
            return new Hood(
                    thickness,
                    level,
                    failed,
                    history,
                    own,
                    rust,
                    count,
                    java.util.Collections.nCopies(contradictions, one));
        }

        Hood ofLevel(double um) {
            return new Hood(thickness, um, failed, history, own, rust, judged, against);
        }

        Hood withFailedCheck() {
            return new Hood(thickness, level, true, history, own, rust, judged, against);
        }

        ZoneFacts facts() {
            return new ZoneFacts(
                    thickness,
                    OptionalDouble.of(level),
                    failed,
                    history,
                    own,
                    rust,
                    List.of(),
                    List.of(),
                    judged,
                    against);
        }
    }

    private static List<Contrast> between(Hood a, Hood b) {
        return ZoneContrasts.of(a.facts(), b.facts(), Letters.AB, UM);
    }

    private static Contrast only(Hood a, Hood b) {
        assertThat(between(a, b)).hasSize(1);
        return between(a, b).get(0);
    }

    /** Shares of the level of its own car, apart by 1.6 or more. */
    @ParameterizedTest
    @CsvSource({"160, 100, true", "159.9, 100, false", "320, 200, true", "319, 200, false", "62.5, 100, true"})
    void thicknessIsToldFromAFactorOf16OfTheOwnLevelOn(double um, double level, boolean told) {
        Hood even = Hood.BARE.spots(100, 100);
        Hood other = Hood.BARE.spots(um, um).ofLevel(level);
        assertThat(between(even, other)).hasSize(told ? 1 : 0);
        assertThat(between(other, even)).hasSize(told ? 1 : 0);
        if (told) {
            assertThat(only(even, other).aspect()).isEqualTo(Aspect.THICKNESS);
            assertThat(only(even, other).speaksFor()).isEmpty();
            assertThat(only(even, other).text()).contains("1.0 times the level of A (100\u202f\u00b5m");
        }
    }

    /** Three spots of 100, 110, 121 beside three about twice that: Welch's interval of the logarithms holds 0 only where they scatter widely. */
    @Test
    void aFactorThatTheScatterLeavesOpenIsNotTold() {
        assertThat(between(Hood.BARE.spots(90, 100, 110), Hood.BARE.spots(190, 200, 210)))
                .hasSize(1);
        assertThat(between(Hood.BARE.spots(40, 100, 160), Hood.BARE.spots(60, 200, 340)))
                .isEmpty();
        assertThat(between(Hood.BARE.spots(100, 100), Hood.BARE.spots(150, 250)))
                .isEmpty();
        assertThat(between(Hood.BARE.spots(-5, 0, 2), Hood.BARE.spots(100, 101, 102)))
                .hasSize(1);
    }

    @Test
    void twoSpotsEachAreNeededAndWhoLacksThemIsNamed() {
        Contrast one = only(Hood.BARE.spots(100, 100), Hood.BARE.spots(300));
        assertThat(one.missing()).contains(Side.B);
        assertThat(one.text()).contains("one spot only", "B");
        Contrast none = only(Hood.BARE, Hood.BARE.spots(100, 100));
        assertThat(none.missing()).contains(Side.A);
        assertThat(none.text()).contains("not measured", "A");
        assertThat(between(Hood.BARE.spots(100), Hood.BARE.spots(300))).isEmpty();
        assertThat(between(Hood.BARE, Hood.BARE.spots(300))).isEmpty();
    }

    @Test
    void aFailedGaugeCheckOnEitherSideSilencesThicknessAndLikelihoods() {
        Hood thick = Hood.BARE.spots(300, 300).likely(0.9, 0, 0.8, 0.95);
        Hood thin = Hood.BARE.spots(100, 100).likely(0.1, 0, 0.05, 0.2);
        assertThat(between(thick, thin)).hasSize(2);
        assertThat(between(thick.withFailedCheck(), thin)).isEmpty();
        assertThat(between(thick, thin.withFailedCheck())).isEmpty();
    }

    /** Bands apart, and 20 points. */
    @ParameterizedTest
    @CsvSource({
        "0.30, 0.20, 0.39, 0.50, 0.40, 0.60, true",
        "0.31, 0.20, 0.39, 0.50, 0.40, 0.60, false",
        "0.30, 0.20, 0.40, 0.50, 0.40, 0.60, false",
    })
    void refinishLikelihoodIsToldWhereBandsLieApartAndTwentyPointsBetween(
            double a, double lowA, double highA, double b, double lowB, double highB, boolean told) {
        Hood left = Hood.BARE.likely(a, 0, lowA, highA);
        Hood right = Hood.BARE.likely(b, 0, lowB, highB);
        assertThat(between(left, right)).hasSize(told ? 1 : 0);
        if (told) {
            assertThat(only(left, right).speaksFor()).contains(Side.A);
            assertThat(only(right, left).speaksFor()).contains(Side.B);
            assertThat(only(left, right).text()).contains("refinish likelihood 30 on A, 50 on B");
        }
    }

    /** Below 20 on one side, above 50 on the other. */
    @ParameterizedTest
    @CsvSource({"0.19, 0.51, true", "0.20, 0.51, false", "0.19, 0.50, false"})
    void repairLikelihoodIsToldBelow20AndAbove50(double a, double b, boolean told) {
        Hood left = Hood.BARE.likely(0.6, a, 0.1, 0.9);
        Hood right = Hood.BARE.likely(0.6, b, 0.1, 0.9);
        assertThat(between(left, right)).hasSize(told ? 1 : 0);
        if (told) {
            assertThat(only(left, right).aspect()).isEqualTo(Aspect.REPAIR);
            assertThat(only(left, right).speaksFor()).contains(Side.A);
            assertThat(only(right, left).speaksFor()).contains(Side.B);
        }
    }

    @Test
    void aLikelihoodThatOneSideLacksIsNamed() {
        Contrast lacks = only(Hood.BARE.likely(0.9, 0, 0.8, 0.95), Hood.BARE);
        assertThat(lacks.missing()).contains(Side.B);
        assertThat(lacks.text()).contains("no spot", "B");
        assertThat(only(Hood.BARE, Hood.BARE.likely(0.9, 0, 0.8, 0.95)).missing())
                .contains(Side.A);
    }

    /** Two standard deviations of both markings, 0.3 and 0.4 points of percent: 1.0. */
    @ParameterizedTest
    @CsvSource({"2.1, true", "1.9, false"})
    void rustIsToldBeyondTwoStandardDeviationsOfTheMarking(double percent, boolean told) {
        Hood less = Hood.BARE.rusted(1, 6, 300, null);
        Hood more = Hood.BARE.rusted(percent, 5, 400, null);
        assertThat(between(less, more)).hasSize(told ? 1 : 0);
        assertThat(between(less, Hood.BARE.rusted(percent, 6, 400, null))).isEmpty();
        if (told) {
            assertThat(only(less, more).speaksFor()).contains(Side.A);
            assertThat(only(more, less).speaksFor()).contains(Side.B);
            assertThat(only(less, more).text()).contains("ASTM D610", "6 on A, 5 on B");
        }
    }

    @Test
    void whoDidNotLookForRustIsNamedAndTheLesserNeedSpeaksForACar() {
        Hood looked = Hood.BARE.rusted(1, 6, 300, RepairNeed.REFINISH);
        assertThat(only(looked, Hood.BARE).missing()).contains(Side.B);
        assertThat(only(Hood.BARE, looked).missing()).contains(Side.A);
        Hood patch = Hood.BARE.rusted(1, 6, 300, RepairNeed.PATCH);
        assertThat(only(looked, patch).speaksFor()).contains(Side.A);
        assertThat(only(patch, looked).speaksFor()).contains(Side.B);
        assertThat(only(patch, looked).text()).contains("repair need patch on A, refinish on B");
        assertThat(between(patch, Hood.BARE.rusted(1, 6, 300, null))).isEmpty();
        assertThat(between(patch, patch)).isEmpty();
    }

    @Test
    void fewerContradictingDatesSpeakForACarWhereItWasJudged() {
        Contrast judged = only(Hood.BARE.dated(3, 2), Hood.BARE.dated(1, 1));
        assertThat(judged.speaksFor()).contains(Side.B);
        assertThat(judged.text()).contains("on A", "block, block");
        assertThat(only(Hood.BARE.dated(1, 0), Hood.BARE.dated(3, 2)).speaksFor())
                .contains(Side.A);
        Contrast unread = only(Hood.BARE.dated(3, 1), Hood.BARE);
        assertThat(unread.missing()).contains(Side.B);
        assertThat(unread.text()).contains("no date read on B", "on A does not go together");
        assertThat(between(Hood.BARE.dated(3, 1), Hood.BARE.dated(1, 1))).isEmpty();
    }

    /** The 5th and 95th percentile. */
    @Test
    void countsAreSummedUpByMeanAndPercentiles() {
        CountSummary even = CountSummary.of(new CountDistribution(List.of(0.05, 0.9, 0.05)));
        assertThat(List.of(even.low(), even.high())).containsExactly(0, 1);
        CountSummary wide = CountSummary.of(new CountDistribution(List.of(0.049, 0.9, 0.051)));
        assertThat(List.of(wide.low(), wide.high())).containsExactly(1, 2);
    }

    @Test
    void missingEvidenceFavorsNeither() {
        assertThatThrownBy(() -> new Contrast(Aspect.RUST, Optional.of(Side.A), Optional.of(Side.B), "no"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
