package quarterlight.thickness.gauge;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.units.Thickness;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;

/**
 * A straight line through what the gauge showed on bare metal and on a shim: corrected = (shown - zero) x factor. The
 * readings as typed stay as they are; only what is computed from them moves.
 *
 * @param zeroUm what the gauge shows on bare metal, um
 * @param factor true thickness per um shown above zero, above 0
 */
public record GaugeCorrection(double zeroUm, double factor) {
    /** Leaves every reading as it is. */
    public static final GaugeCorrection NONE = new GaugeCorrection(0, 1);

    /** A gauge farther off than this is broken or was noted wrongly; judgement. */
    private static final double MAX_FACTOR = 1.25;

    private static final double MAX_ZERO_UM = 50;

    public GaugeCorrection {
        if (!Double.isFinite(zeroUm) || !Double.isFinite(factor) || factor <= 0) {
            throw new IllegalArgumentException("a correction needs a finite zero and a factor above 0");
        }
    }

    /**
     * The line through the mean of what was shown on bare metal and the mean of what was shown on the thickest shim,
     * before and after taken together.
     *
     * @return empty if either is missing, if the shim did not read above bare metal, or if no gauge is so far off
     */
    public static Optional<GaugeCorrection> ofTwoPoints(List<GaugeCheck> checks) {
        return Points.of(checks).flatMap(Points::line).filter(GaugeCorrection::isPlausible);
    }

    /** Why a correction that was chosen is not applied; empty if it is, or if the checks give none. */
    public static Optional<String> refusal(List<GaugeCheck> checks) {
        return Points.of(checks).flatMap(points -> points.line()
                .map(line -> line.isPlausible() ? Optional.<String>empty() : Optional.of(line.tooFarOff()))
                .orElse(Optional.of(say("thickness.correction.no-line"))));
    }

    private String tooFarOff() {
        return say("thickness.correction.too-far-off", figure("%.2f", factor), figure("%.0f", zeroUm));
    }

    private boolean isPlausible() {
        return factor >= 1 / MAX_FACTOR && factor <= MAX_FACTOR && Math.abs(zeroUm) <= MAX_ZERO_UM;
    }

    /** What was shown on bare metal and on the thickest shim, um. */
    private record Points(double bare, double shown, double nominal) {
        /** Empty if either was not checked. */
        static Optional<Points> of(List<GaugeCheck> checks) {
            OptionalDouble bare = checks.stream()
                    .filter(check -> check.on() == GaugeSurface.BARE)
                    .mapToDouble(check -> check.shown().thickness().um())
                    .average();
            OptionalDouble thickest = checks.stream()
                    .filter(check -> check.on() == GaugeSurface.SHIM)
                    .mapToDouble(check -> check.nominal().thickness().um())
                    .filter(nominal -> nominal > 0)
                    .max();
            if (bare.isEmpty() || thickest.isEmpty()) {
                return Optional.empty();
            }
            double nominal = thickest.getAsDouble();
            double shown = checks.stream()
                    .filter(check -> check.on() == GaugeSurface.SHIM)
                    .filter(check -> Math.abs(check.nominal().thickness().um() - nominal) < 1e-9)
                    .mapToDouble(check -> check.shown().thickness().um())
                    .average()
                    .orElseThrow();
            return Optional.of(new Points(bare.getAsDouble(), shown, nominal));
        }

        /** Empty if the shim did not read above bare metal. */
        Optional<GaugeCorrection> line() {
            double span = shown - bare;
            return span > 0 ? Optional.of(new GaugeCorrection(bare, nominal / span)) : Optional.empty();
        }
    }

    public Thickness apply(Thickness shown) {
        return new Thickness((shown.um() - zeroUm) * factor);
    }

    public double um(GaugeValue.Measured value) {
        return apply(value.thickness()).um();
    }
}
