package quarterlight.visit.mark;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.PartialDate;

/**
 * A figure of the odometer.
 *
 * @param figure as it stood there
 * @param date when it stood there; empty for the visit itself, or if it is not known
 * @param wentRound whether the odometer may have gone past its last digit
 */
public record OdometerFigure(
        BigDecimal figure,
        DistanceUnit unit,
        OdometerSource source,
        Optional<PartialDate> date,
        boolean wentRound,
        Optional<String> note) {
    public OdometerFigure {
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(note, "note");
        if (figure.signum() < 0) {
            throw new IllegalArgumentException("an odometer shows 0 or more, not " + figure.toPlainString());
        }
    }
}
