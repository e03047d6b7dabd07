package quarterlight.thickness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.StandardDeviation;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.thickness.statistics.MeanInterval;
import quarterlight.thickness.statistics.UncertaintyBudget;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;

/**
 * How far the mean of a zone is known, gauge and shims included: to the scatter of its spots come the accuracy stated of the gauge or,
 * if the mean is corrected by two points, what is not known of those.
 * <p>As typed the mean m has the parts s/√n and the gauge's limits at m. Corrected it is c = (m - z) N / (h - z), z and h what was
 * shown on bare metal and on the thickest shim, N its nominal thickness; the parts are f s/√n, f (1 - c/N) u(z), c/N f u(h) and c/N
 * u(N), with f = N / (h - z). u(z) and u(h): scatter of repeated looks, and the last digit typed as limits of half of it; u(N): the
 * shim's tolerance as limits. Source: JCGM 100:2008, 4.3.7, 5.1 and G.4.
 *
 * @param meanUm the mean, corrected if the survey is
 * @param budget its parts in um
 */
public record MeanUncertainty(double meanUm, UncertaintyBudget budget) {
    /** @return empty for fewer than two spots, or if nothing is stated or known beside their scatter */
    public static Optional<MeanUncertainty> of(
            ZoneThickness zone, GaugeCorrection correction, List<GaugeCheck> checks) {
        double[] um = zone.spotsUm();
        if (um.length < 2) {
            return Optional.empty();
        }
        double mean = Mean.of(um).getAsDouble();
        List<UncertaintyBudget.Part> parts = new ArrayList<>();
        // spots of a corrected survey are corrected already, so their scatter holds the factor
        parts.add(new UncertaintyBudget.Part(
                "scatter of the spots",
                StandardDeviation.of(um).getAsDouble() / Math.sqrt(um.length),
                um.length - 1.0));
        List<UncertaintyBudget.Part> more =
                correction.equals(GaugeCorrection.NONE) ? ofGauge(mean, checks) : ofPoints(mean, correction, checks);
        parts.addAll(more);
        return more.isEmpty() ? Optional.empty() : Optional.of(new MeanUncertainty(mean, new UncertaintyBudget(parts)));
    }

    /** Half-width of the 95 % interval, um. */
    public double expandedUm() {
        return budget.expanded(MeanInterval.LEVEL);
    }

    /** The widest accuracy stated of the gauge, at this thickness. */
    private static List<UncertaintyBudget.Part> ofGauge(double mean, List<GaugeCheck> checks) {
        return checks.stream()
                .filter(check -> check.gaugeTolerancePercent().isPresent()
                        || check.gaugeToleranceUm().isPresent())
                .mapToDouble(check -> check.gaugeTolerancePercent().orElse(0) / 100 * Math.abs(mean)
                        + check.gaugeToleranceUm().orElse(0))
                .max()
                .stream()
                .mapToObj(limit -> UncertaintyBudget.Part.ofLimits("accuracy of the gauge", limit))
                .toList();
    }

    private static List<UncertaintyBudget.Part> ofPoints(
            double mean, GaugeCorrection correction, List<GaugeCheck> checks) {
        List<GaugeCheck> bare =
                checks.stream().filter(check -> check.on() == GaugeSurface.BARE).toList();
        double nominal = checks.stream()
                .filter(check -> check.on() == GaugeSurface.SHIM)
                .map(check -> check.nominal().thickness().um())
                .max(Comparator.naturalOrder())
                .orElse(0.0);
        List<GaugeCheck> shim = checks.stream()
                .filter(check -> check.on() == GaugeSurface.SHIM)
                .filter(check -> Math.abs(check.nominal().thickness().um() - nominal) < 1e-9)
                .toList();
        if (bare.isEmpty() || shim.isEmpty() || nominal <= 0) {
            return List.of();
        }
        double share = mean / nominal;
        List<UncertaintyBudget.Part> parts = new ArrayList<>();
        parts.addAll(ofLooks("bare metal", bare, Math.abs(correction.factor() * (1 - share))));
        parts.addAll(ofLooks("shim", shim, Math.abs(correction.factor() * share)));
        shim.stream()
                .flatMapToDouble(check -> check.nominalToleranceUm().stream())
                .max()
                .ifPresent(limit ->
                        parts.add(UncertaintyBudget.Part.ofLimits("thickness of the shim", limit * Math.abs(share))));
        return parts;
    }

    /** What is not known of the mean shown on one surface, times how much of it goes into the result. */
    private static List<UncertaintyBudget.Part> ofLooks(String surface, List<GaugeCheck> looks, double sensitivity) {
        List<UncertaintyBudget.Part> parts = new ArrayList<>();
        double digit = looks.stream()
                .mapToDouble(look -> lastDigitUm(look.shown()))
                .max()
                .orElse(0);
        parts.add(UncertaintyBudget.Part.ofLimits(
                "last digit on " + surface, digit / 2 / Math.sqrt(looks.size()) * sensitivity));
        if (looks.size() > 1) {
            double[] shown = looks.stream()
                    .mapToDouble(look -> look.shown().thickness().um())
                    .toArray();
            parts.add(new UncertaintyBudget.Part(
                    "repeats on " + surface,
                    StandardDeviation.of(shown).getAsDouble() / Math.sqrt(shown.length) * sensitivity,
                    shown.length - 1.0));
        }
        return parts;
    }

    private static double lastDigitUm(GaugeValue.Measured value) {
        return value.unit().toUm(Math.pow(10, -Math.max(0, value.typed().scale())));
    }
}
