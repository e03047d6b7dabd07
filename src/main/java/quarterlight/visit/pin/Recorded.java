package quarterlight.visit.pin;

import java.util.Objects;

/** A value as it stands in the visit, with the number of its row. */
public record Recorded<T>(RecordId id, T value) {
    public Recorded {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(value, "value");
    }
}
