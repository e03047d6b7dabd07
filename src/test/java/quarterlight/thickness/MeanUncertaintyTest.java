package quarterlight.thickness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterlight.table.ZoneTable;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;

/** The uncertainty of a mean against hand arithmetic and against brute force. */
class MeanUncertaintyTest {
    private static final double[] READINGS = {128, 131, 126, 135, 130};
    /** Of the readings: sd 3.391165, over the root of 5. */
    private static final double SCATTER = 1.516575;

    private static ZoneThickness hood(GaugeCorrection correction) {
        VisitBuilder visit = new VisitBuilder();
        for (double um : READINGS) {
            visit.reading("hood", Double.toString(um));
        }
        return ThicknessSurvey.of(visit.build(), ZoneTable.load(), correction)
                .zones()
                .get(0);
    }

    private static GaugeCheck check(
            GaugeMoment when, GaugeSurface on, String nominal, String shown, double shimTolerance) {
        return new GaugeCheck(
                when,
                on,
                um(nominal),
                um(shown),
                on == GaugeSurface.SHIM ? OptionalDouble.of(shimTolerance) : OptionalDouble.empty(),
                OptionalDouble.of(3),
                OptionalDouble.of(2),
                Optional.empty());
    }

    private static GaugeValue.Measured um(String typed) {
        return new GaugeValue.Measured(new BigDecimal(typed), ThicknessUnit.UM);
    }

    private static final List<GaugeCheck> CHECKS = List.of(
            check(GaugeMoment.BEFORE, GaugeSurface.BARE, "0", "3", 0),
            check(GaugeMoment.AFTER, GaugeSurface.BARE, "0", "5", 0),
            check(GaugeMoment.BEFORE, GaugeSurface.SHIM, "250", "258", 2),
            check(GaugeMoment.AFTER, GaugeSurface.SHIM, "250", "262", 2));

    @Test
    void asTypedTheGaugesLimitsCount() {
        MeanUncertainty found = MeanUncertainty.of(hood(GaugeCorrection.NONE), GaugeCorrection.NONE, CHECKS)
                .orElseThrow();
        // limits 3 % of 130 and 2: 5.9, over the root of 3: 3.406367
        assertThat(found.meanUm()).isCloseTo(130, within(1e-9));
        assertThat(found.budget().combined()).isCloseTo(Math.hypot(SCATTER, 3.406367), within(1e-5));
    }

    @Test
    void withoutAnythingStatedThereIsNothingToAdd() {
        assertThat(MeanUncertainty.of(hood(GaugeCorrection.NONE), GaugeCorrection.NONE, List.of()))
                .isEmpty();
    }

    private static GaugeCheck look(GaugeSurface on, String nominal, String shown) {
        return new GaugeCheck(
                GaugeMoment.BEFORE,
                on,
                um(nominal),
                um(shown),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    private static GaugeCheck stated(OptionalDouble percent, OptionalDouble um) {
        return new GaugeCheck(
                GaugeMoment.BEFORE,
                GaugeSurface.BARE,
                um("0"),
                um("0"),
                OptionalDouble.empty(),
                percent,
                um,
                Optional.empty());
    }

    private static double beside(GaugeCorrection correction, GaugeCheck... checks) {
        MeanUncertainty found = MeanUncertainty.of(hood(correction), correction, List.of(checks))
                .orElseThrow();
        double scatter = SCATTER * correction.factor();
        double all = found.budget().combined();
        return Math.sqrt(all * all - scatter * scatter);
    }

    @Test
    void eitherPartOfTheAccuracyCountsAloneAndTheWidestOfSeveral() {
        // limits over the root of 3: 2 % of 130; 3 um; the wider of the two
        assertThat(beside(GaugeCorrection.NONE, stated(OptionalDouble.of(2), OptionalDouble.empty())))
                .isCloseTo(2.6 / Math.sqrt(3), within(1e-4));
        assertThat(beside(GaugeCorrection.NONE, stated(OptionalDouble.empty(), OptionalDouble.of(3))))
                .isCloseTo(3 / Math.sqrt(3), within(1e-4));
        assertThat(beside(
                        GaugeCorrection.NONE,
                        stated(OptionalDouble.of(2), OptionalDouble.empty()),
                        stated(OptionalDouble.empty(), OptionalDouble.of(3)),
                        look(GaugeSurface.BARE, "0", "1")))
                .isCloseTo(3 / Math.sqrt(3), within(1e-4));
        assertThat(MeanUncertainty.of(
                        hood(GaugeCorrection.NONE), GaugeCorrection.NONE, List.of(look(GaugeSurface.BARE, "0", "1"))))
                .isEmpty();
    }

    @Test
    void oneLookOnEachPointLeavesTheLastDigit() {
        // factor 1, zero 0, c / N = 130 / 260: half of each half digit, over the root of 3
        GaugeCorrection none = new GaugeCorrection(0, 1.0000000001);
        assertThat(beside(none, look(GaugeSurface.BARE, "0", "0"), look(GaugeSurface.SHIM, "260", "260")))
                .isCloseTo(Math.hypot(.25, .25) / Math.sqrt(3), within(1e-4));
        assertThat(beside(none, look(GaugeSurface.BARE, "0", "0.0"), look(GaugeSurface.SHIM, "260", "260.0")))
                .isCloseTo(Math.hypot(.025, .025) / Math.sqrt(3), within(1e-4));
        // tens typed as 2.6E+2 are whole micrometers all the same
        assertThat(beside(none, look(GaugeSurface.BARE, "0", "0"), look(GaugeSurface.SHIM, "260", "2.6E+2")))
                .isCloseTo(Math.hypot(.25, .25) / Math.sqrt(3), within(1e-4));
    }

    @Test
    void repeatedLooksCountByTheirScatterAndOnlyOnTheThickestShim() {
        GaugeCorrection none = new GaugeCorrection(0, 1.0000000001);
        // bare: the sd of 0 and 2 is 1.414214, over the root of 2 it is 1; digits 0.5 / root 2; both by half
        double bare = .5 * Math.hypot(1, .5 / Math.sqrt(2) / Math.sqrt(3));
        double shim = .5 * .5 / Math.sqrt(3);
        assertThat(beside(
                        none,
                        look(GaugeSurface.BARE, "0", "0"),
                        look(GaugeSurface.BARE, "0", "2"),
                        look(GaugeSurface.SHIM, "125", "100"),
                        look(GaugeSurface.SHIM, "260", "260")))
                .isCloseTo(Math.hypot(bare, shim), within(1e-4));
    }

    @Test
    void aCorrectionNeedsBothPointsAndAMeanNeedsTwoSpots() {
        GaugeCorrection correction = new GaugeCorrection(4, 1.1);
        assertThat(MeanUncertainty.of(hood(correction), correction, List.of(look(GaugeSurface.BARE, "0", "4"))))
                .isEmpty();
        assertThat(MeanUncertainty.of(hood(correction), correction, List.of(look(GaugeSurface.SHIM, "250", "254"))))
                .isEmpty();
        VisitBuilder visit = new VisitBuilder();
        visit.reading("hood", "128");
        assertThat(MeanUncertainty.of(only(visit), GaugeCorrection.NONE, CHECKS))
                .isEmpty();
        visit.reading("hood", "130");
        assertThat(MeanUncertainty.of(only(visit), GaugeCorrection.NONE, CHECKS))
                .isPresent();
    }

    private static ZoneThickness only(VisitBuilder visit) {
        return ThicknessSurvey.of(visit.build(), ZoneTable.load(), GaugeCorrection.NONE)
                .zones()
                .get(0);
    }

    /** Each input drawn anew from its law, the correction taken anew: the scatter of the result is the combined uncertainty. */
    @Test
    void theCorrectedMeanScattersAsItSays() {
        GaugeCorrection correction = GaugeCorrection.ofTwoPoints(CHECKS).orElseThrow();
        MeanUncertainty found =
                MeanUncertainty.of(hood(correction), correction, CHECKS).orElseThrow();
        double expected = (130 - 4) * 250.0 / (260 - 4);
        assertThat(found.meanUm()).isCloseTo(expected, within(1e-9));
        Random random = new Random(17);
        int draws = 400_000;
        double sum = 0;
        double squares = 0;
        for (int n = 0; n < draws; n++) {
            double m = 130 + SCATTER * random.nextGaussian();
            // two looks: sd 1.414214 and 2.828427 over the root of 2; digits of 1 um, so limits of 0.5 over the root of
            // 2
            double z = 4 + random.nextGaussian() + limits(random, 0.5 / Math.sqrt(2));
            double h = 260 + 2 * random.nextGaussian() + limits(random, 0.5 / Math.sqrt(2));
            double shim = 250 + limits(random, 2);
            double c = (m - z) * shim / (h - z);
            sum += c;
            squares += c * c;
        }
        double sd = Math.sqrt(squares / draws - (sum / draws) * (sum / draws));
        assertThat(found.budget().combined()).isCloseTo(sd, within(0.01 * sd));
    }

    /** One look at each surface: what is not known of it is half its last digit, as limits, and nothing else. */
    @Test
    void oneLookIsUncertainByHalfItsLastDigit() {
        List<GaugeCheck> looks = List.of(
                check(GaugeMoment.BEFORE, GaugeSurface.BARE, "0", "4.0", 0),
                check(GaugeMoment.BEFORE, GaugeSurface.SHIM, "250", "260", 0));
        GaugeCorrection correction = GaugeCorrection.ofTwoPoints(looks).orElseThrow();
        double factor = 250.0 / 256;
        double share = (130 - 4) * factor / 250;
        double bare = 0.05 / Math.sqrt(3) * factor * (1 - share);
        double shim = 0.5 / Math.sqrt(3) * factor * share;
        double combined = Math.hypot(factor * SCATTER, Math.hypot(bare, shim));
        assertThat(MeanUncertainty.of(hood(correction), correction, looks)
                        .orElseThrow()
                        .budget()
                        .combined())
                .isCloseTo(combined, within(1e-6));
    }

    private static double limits(Random random, double limit) {
        return limit * (2 * random.nextDouble() - 1);
    }
}
