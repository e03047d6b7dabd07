package quarterlight.thickness.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;

/**
 * Whether the gauge can be trusted on the day: every check with its verdict, and how far it moved from before to after.
 *
 * @param verdicts in the order recorded; empty if the gauge was not checked
 * @param drifts for every surface checked both before and after
 */
public record GaugeQuality(List<GaugeVerdict> verdicts, List<Drift> drifts) {
    /**
     * The mean shown after less the mean shown before, on the same surface.
     *
     * @param nominalUm thickness of the shim in um, 0 on bare metal
     * @param driftUm after less before, um
     * @param toleranceUm the widest combined tolerance stated for it; empty if none
     */
    public record Drift(GaugeSurface on, double nominalUm, double driftUm, OptionalDouble toleranceUm) {
        /** True if the drift is beyond the tolerance stated. */
        public boolean isBeyond() {
            return toleranceUm.isPresent() && Math.abs(driftUm) > toleranceUm.getAsDouble();
        }
    }

    /** What all verdicts together say. */
    public enum Summary {
        /** No check was made. */
        NOT_CHECKED,
        /** Checks were made, but no tolerance was stated for one of them at least, and none failed. */
        CANNOT_TELL,
        PASSED,
        /** A check failed: all readings since the last good one are suspect. */
        FAILED
    }

    public GaugeQuality {
        verdicts = List.copyOf(verdicts);
        drifts = List.copyOf(drifts);
    }

    public static GaugeQuality of(VisitRecord visit) {
        List<GaugeVerdict> verdicts = new ArrayList<>();
        for (Recorded<GaugeCheck> check : visit.gaugeChecks()) {
            verdicts.add(GaugeVerdict.of(check.id(), check.value()));
        }
        List<Drift> drifts = new ArrayList<>();
        for (GaugeSurface on : GaugeSurface.values()) {
            verdicts.stream()
                    .filter(verdict -> verdict.check().on() == on)
                    .mapToDouble(GaugeQuality::nominal)
                    .distinct()
                    .sorted()
                    .forEach(nominal -> drift(verdicts, on, nominal).ifPresent(drifts::add));
        }
        return new GaugeQuality(verdicts, drifts);
    }

    private static Optional<Drift> drift(List<GaugeVerdict> verdicts, GaugeSurface on, double nominal) {
        List<GaugeVerdict> same = verdicts.stream()
                .filter(verdict -> verdict.check().on() == on && nominal(verdict) == nominal)
                .toList();
        OptionalDouble before = shown(same, GaugeMoment.BEFORE);
        OptionalDouble after = shown(same, GaugeMoment.AFTER);
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble tolerance = same.stream()
                .flatMapToDouble(verdict -> verdict.toleranceUm().stream())
                .max();
        return Optional.of(new Drift(on, nominal, after.getAsDouble() - before.getAsDouble(), tolerance));
    }

    private static OptionalDouble shown(List<GaugeVerdict> verdicts, GaugeMoment when) {
        return verdicts.stream()
                .filter(verdict -> verdict.check().when() == when)
                .mapToDouble(verdict -> verdict.check().shown().thickness().um())
                .average();
    }

    private static double nominal(GaugeVerdict verdict) {
        return verdict.check().nominal().thickness().um();
    }

    public Summary summary() {
        if (verdicts.isEmpty()) {
            return Summary.NOT_CHECKED;
        }
        if (verdicts.stream().anyMatch(verdict -> verdict.canTell() && !verdict.passes())) {
            return Summary.FAILED;
        }
        return verdicts.stream().allMatch(GaugeVerdict::canTell) ? Summary.PASSED : Summary.CANNOT_TELL;
    }

    /** The two-point correction that the checks allow, if any; see {@link GaugeCorrection#ofTwoPoints}. */
    public Optional<GaugeCorrection> correction() {
        return GaugeCorrection.ofTwoPoints(
                verdicts.stream().map(GaugeVerdict::check).toList());
    }
}
