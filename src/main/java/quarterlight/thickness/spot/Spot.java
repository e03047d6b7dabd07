package quarterlight.thickness.spot;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.visit.pin.RecordId;

/**
 * One place of a zone: a reading that stands alone, or the readings that bear the same label.
 * <p>With at least one number it is the mean of its numbers, whatever else was shown there: a reading beyond the range or
 * without metal that the others do not repeat is dropped, as SSPC-PA 2 drops a reading that does not repeat. Without a
 * number it is beyond the range if any reading was, else without metal.
 *
 * @param label as typed, if the readings bore one
 * @param um mean of the numbers in um if {@code kind} is {@link SpotKind#VALUE}, else empty
 * @param readings the rows it rests on, at least one
 */
public record Spot(Optional<String> label, SpotKind kind, OptionalDouble um, List<RecordId> readings) {
    public Spot {
        Objects.requireNonNull(label, "label");
        readings = List.copyOf(readings);
        if (um.isPresent() != (kind == SpotKind.VALUE)) {
            throw new IllegalArgumentException("a spot has a number if and only if it is a value");
        }
    }
}
