package quarterlight.visit.row;

import java.util.Objects;
import java.util.OptionalDouble;
import quarterlight.visit.reading.GaugeValue;

/** What a gauge should show and what it showed, in one unit, with the tolerance of what it was laid on. */
public record ShownThickness(GaugeValue.Measured nominal, GaugeValue.Measured shown, OptionalDouble toleranceUm) {
    public ShownThickness {
        Objects.requireNonNull(nominal, "nominal");
        Objects.requireNonNull(shown, "shown");
        Objects.requireNonNull(toleranceUm, "toleranceUm");
    }
}
