package quarterlight.thickness.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.Substrate;
import quarterlight.thickness.VisitBuilder;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;

class GaugeQualityTest {
    private final VisitBuilder visit = new VisitBuilder();

    @Test
    void combinedToleranceIsTheRootOfTheSumOfSquares() {
        assertThat(GaugeVerdict.combinedTolerance(5, 5)).isCloseTo(7.0711, within(5e-5));
        assertThat(GaugeVerdict.combinedTolerance(5, 2)).isCloseTo(5.3852, within(5e-5));
        assertThat(GaugeVerdict.combinedTolerance(3, 2)).isCloseTo(3.6056, within(5e-5));
    }

    @Test
    void aTenMilShimWithFivePercentOnBothSides() {
        // ASTM D7091's example from memory: 7 %, so 236 to 272 um on 254; unrounded 7.0711 %, 236.04 to 271.96
        assertThat(verdict(254, 236.3).passes()).isTrue();
        assertThat(verdict(254, 235.9).passes()).isFalse();
        assertThat(verdict(254, 271.8).passes()).isTrue();
        assertThat(verdict(254, 272.1).passes()).isFalse();
    }

    @Test
    void aCheckWithoutToleranceCannotTell() {
        visit.check(check(GaugeMoment.BEFORE, GaugeSurface.SHIM, 125, 127, OptionalDouble.empty()));
        GaugeQuality quality = GaugeQuality.of(visit.build());
        assertThat(quality.verdicts().get(0).canTell()).isFalse();
        assertThat(quality.summary()).isEqualTo(GaugeQuality.Summary.CANNOT_TELL);
    }

    @Test
    void aVisitWithoutCheckSaysSo() {
        assertThat(GaugeQuality.of(visit.build()).summary()).isEqualTo(GaugeQuality.Summary.NOT_CHECKED);
    }

    @Test
    void driftIsAfterLessBeforeOnTheSameSurface() {
        visit.check(check(GaugeMoment.BEFORE, GaugeSurface.BARE, 0, 1, OptionalDouble.of(3)));
        visit.check(check(GaugeMoment.BEFORE, GaugeSurface.SHIM, 125, 126, OptionalDouble.of(3)));
        visit.check(check(GaugeMoment.AFTER, GaugeSurface.SHIM, 125, 131, OptionalDouble.of(3)));
        GaugeQuality quality = GaugeQuality.of(visit.build());
        assertThat(quality.drifts()).hasSize(1);
        assertThat(quality.drifts().get(0).driftUm()).isCloseTo(5, within(1e-9));
        assertThat(quality.drifts().get(0).isBeyond()).isTrue();
        assertThat(quality.summary()).isEqualTo(GaugeQuality.Summary.FAILED);
    }

    @Test
    void twoPointCorrectionMovesBothPointsToTheirTrueValue() {
        List<GaugeCheck> checks = new ArrayList<>();
        checks.add(check(GaugeMoment.BEFORE, GaugeSurface.BARE, 0, 4, OptionalDouble.empty()));
        assertThat(GaugeCorrection.ofTwoPoints(checks)).isEmpty();
        checks.add(check(GaugeMoment.BEFORE, GaugeSurface.SHIM, 250, 259, OptionalDouble.empty()));
        GaugeCorrection correction = GaugeCorrection.ofTwoPoints(checks).orElseThrow();
        assertThat(correction.apply(new Thickness(4)).um()).isCloseTo(0, within(1e-9));
        assertThat(correction.apply(new Thickness(259)).um()).isCloseTo(250, within(1e-9));
    }

    @Test
    void aShimThatReadsNoHigherThanBareMetalGivesNoCorrection() {
        assertThat(GaugeCorrection.ofTwoPoints(List.of(
                        check(GaugeMoment.BEFORE, GaugeSurface.BARE, 0, 4, OptionalDouble.empty()),
                        check(GaugeMoment.BEFORE, GaugeSurface.SHIM, 250, 4, OptionalDouble.empty()))))
                .isEmpty();
    }

    /** A factor of 1.25 or 0.8 and a zero of 50 um are as far off as a gauge that works can be. */
    @ParameterizedTest
    @CsvSource({
        "0, 125, 100, true",
        "0, 125, 99.9, false",
        "0, 100, 125, true",
        "0, 100, 125.1, false",
        "50, 100, 150, true",
        "50.1, 100, 150.1, false",
        "-50, 100, 50, true",
        "-50.1, 100, 49.9, false",
        "0, 25.4, 76.2, false",
        "4, 250, 4, false",
        "4, 250, 3, false"
    })
    void aCorrectionThatCannotBeIsRefusedWithItsReason(double bare, double nominal, double shown, boolean taken) {
        List<GaugeCheck> checks = List.of(
                check(GaugeMoment.BEFORE, GaugeSurface.BARE, 0, bare, OptionalDouble.empty()),
                check(GaugeMoment.BEFORE, GaugeSurface.SHIM, nominal, shown, OptionalDouble.empty()));
        assertThat(GaugeCorrection.ofTwoPoints(checks).isPresent()).isEqualTo(taken);
        assertThat(GaugeCorrection.refusal(checks).isPresent()).isEqualTo(!taken);
        GaugeCorrection.refusal(checks)
                .ifPresent(why -> assertThat(why).contains("the readings stand as typed", "Check "));
    }

    @Test
    void withoutBareMetalOrAShimThereIsNothingToRefuse() {
        assertThat(GaugeCorrection.refusal(
                        List.of(check(GaugeMoment.BEFORE, GaugeSurface.BARE, 0, 900, OptionalDouble.empty()))))
                .isEmpty();
    }

    @Test
    void aCorrectionBeyondAnyGaugeIsRefused() {
        assertThat(correction(0, 100, 80)).isPresent();
        assertThat(correction(0, 100, 79.9)).isEmpty();
        assertThat(correction(0, 100, 125)).isPresent();
        assertThat(correction(0, 100, 125.1)).isEmpty();
        assertThat(correction(50, 1000, 1050)).isPresent();
        assertThat(correction(50.1, 1000, 1050)).isEmpty();
        assertThat(correction(-50, 1000, 950)).isPresent();
        assertThat(correction(-50.1, 1000, 950)).isEmpty();
    }

    @Test
    void aDriftOfJustTheToleranceIsNotBeyond() {
        assertThat(drift(3).isBeyond()).isFalse();
        assertThat(drift(-3).isBeyond()).isFalse();
        assertThat(drift(3.01).isBeyond()).isTrue();
        assertThat(drift(-3.01).isBeyond()).isTrue();
        assertThat(new GaugeQuality.Drift(GaugeSurface.BARE, 0, 90, OptionalDouble.empty()).isBeyond())
                .isFalse();
    }

    @Test
    void oneCheckThatFailsOutweighsOneThatCannotTell() {
        visit.check(check(GaugeMoment.BEFORE, GaugeSurface.SHIM, 125, 127, OptionalDouble.empty()));
        visit.check(check(GaugeMoment.BEFORE, GaugeSurface.SHIM, 125, 127, OptionalDouble.of(1)));
        assertThat(GaugeQuality.of(visit.build()).summary()).isEqualTo(GaugeQuality.Summary.FAILED);
    }

    @Test
    void checksThatAllHoldArePassed() {
        visit.check(check(GaugeMoment.BEFORE, GaugeSurface.SHIM, 125, 127, OptionalDouble.of(2)));
        visit.check(check(GaugeMoment.AFTER, GaugeSurface.SHIM, 125, 123, OptionalDouble.of(2)));
        assertThat(GaugeQuality.of(visit.build()).summary()).isEqualTo(GaugeQuality.Summary.PASSED);
        assertThat(GaugeQuality.of(visit.build()).drifts())
                .extracting(GaugeQuality.Drift::driftUm)
                .containsExactly(-4.0);
    }

    private static Optional<GaugeCorrection> correction(double bareUm, double shimUm, double shownUm) {
        return GaugeCorrection.ofTwoPoints(List.of(
                check(GaugeMoment.BEFORE, GaugeSurface.BARE, 0, bareUm, OptionalDouble.empty()),
                check(GaugeMoment.BEFORE, GaugeSurface.SHIM, shimUm, shownUm, OptionalDouble.empty())));
    }

    private static GaugeQuality.Drift drift(double um) {
        return new GaugeQuality.Drift(GaugeSurface.BARE, 0, um, OptionalDouble.of(3));
    }

    @Test
    void aGaugeReadsWhatItsPrincipleAllows() {
        assertThat(GaugeReach.reads(Substrate.STEEL, Set.of())).isTrue();
        assertThat(GaugeReach.reads(Substrate.ALUMINUM, Set.of(GaugeMode.MAGNETIC)))
                .isFalse();
        assertThat(GaugeReach.reads(Substrate.ALUMINUM, Set.of(GaugeMode.EDDY))).isTrue();
        assertThat(GaugeReach.reads(Substrate.FIBERGLASS, Set.of(GaugeMode.EDDY)))
                .isFalse();
    }

    private GaugeVerdict verdict(double nominal, double shown) {
        VisitBuilder one = new VisitBuilder();
        one.check(new GaugeCheck(
                GaugeMoment.BEFORE,
                GaugeSurface.SHIM,
                um(nominal),
                um(shown),
                OptionalDouble.of(0.05 * nominal),
                OptionalDouble.of(5),
                OptionalDouble.empty(),
                Optional.empty()));
        return GaugeQuality.of(one.build()).verdicts().get(0);
    }

    private static GaugeCheck check(
            GaugeMoment when, GaugeSurface on, double nominal, double shown, OptionalDouble tolerance) {
        return new GaugeCheck(
                when,
                on,
                um(nominal),
                um(shown),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                tolerance,
                Optional.empty());
    }

    private static GaugeValue.Measured um(double value) {
        return new GaugeValue.Measured(BigDecimal.valueOf(value), ThicknessUnit.UM);
    }
}
