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
