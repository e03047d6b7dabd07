package quarterlight.visit.reading;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the gauge showed on bare metal or on a shim of known thickness.
 *
 * @param nominal thickness of the shim; 0 on bare metal
 * @param shown what the gauge showed
 * @param nominalToleranceUm stated tolerance of the shim, um
 * @param gaugeTolerancePercent stated tolerance of the gauge, percent of the value
 * @param gaugeToleranceUm stated tolerance of the gauge, um
 */
public record GaugeCheck(
        GaugeMoment when,
        GaugeSurface on,
        GaugeValue.Measured nominal,
        GaugeValue.Measured shown,
        OptionalDouble nominalToleranceUm,
        OptionalDouble gaugeTolerancePercent,
        OptionalDouble gaugeToleranceUm,
        Optional<String> note) {
    public GaugeCheck {
        Objects.requireNonNull(when, "when");
        Objects.requireNonNull(on, "on");
        Objects.requireNonNull(nominal, "nominal");
        Objects.requireNonNull(shown, "shown");
    }
}
