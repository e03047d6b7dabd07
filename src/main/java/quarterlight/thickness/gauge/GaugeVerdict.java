package quarterlight.thickness.gauge;

import java.util.OptionalDouble;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.reading.GaugeCheck;

/**
 * One look at the gauge on bare metal or on a shim: does what it showed agree within the tolerances stated?
 * <p>Combined tolerance √(a² + b²) of gauge and shim, as ASTM D7091 has it (from memory). A gauge tolerance stated as
 * percent and um is their sum, the percent taken of the nominal thickness.
 *
 * @param row the row of the check
 * @param deviationUm shown less nominal, um
 * @param toleranceUm combined tolerance in um; empty if none was stated
 */
public record GaugeVerdict(RecordId row, GaugeCheck check, double deviationUm, OptionalDouble toleranceUm) {
    // far below what a gauge shows, above the rounding of binary fractions
    private static final double ROUNDING_UM = 1e-9;

    static GaugeVerdict of(RecordId row, GaugeCheck check) {
        double nominal = check.nominal().thickness().um();
        OptionalDouble tolerance = OptionalDouble.empty();
        boolean gauge = check.gaugeTolerancePercent().isPresent()
                || check.gaugeToleranceUm().isPresent();
        if (gauge || check.nominalToleranceUm().isPresent()) {
            double ofGauge = check.gaugeTolerancePercent().orElse(0) / 100 * nominal
                    + check.gaugeToleranceUm().orElse(0);
            tolerance = OptionalDouble.of(
                    combinedTolerance(ofGauge, check.nominalToleranceUm().orElse(0)));
        }
        return new GaugeVerdict(row, check, check.shown().thickness().um() - nominal, tolerance);
    }

    /** Root of the sum of the squares of two tolerances in the same unit. */
    public static double combinedTolerance(double gauge, double standard) {
        return Math.hypot(gauge, standard);
    }

    /** True if the deviation is within the tolerance; false too if none was stated: ask {@link #canTell} first. */
    public boolean passes() {
        return toleranceUm.isPresent() && Math.abs(deviationUm) <= toleranceUm.getAsDouble() + ROUNDING_UM;
    }

    public boolean canTell() {
        return toleranceUm.isPresent();
    }
}
