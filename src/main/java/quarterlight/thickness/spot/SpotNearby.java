package quarterlight.thickness.spot;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.Reading;

/**
 * The spot that a reading at a point joins: the nearest one of the zone that was first touched within 4 cm. Source of the distance: SSPC-PA 2
 * (2012), section 3.2, where the readings of a spot lie within a circle of about 4 cm.
 *
 * @param label of the spot
 * @param toLabel the readings of that spot that bear no label yet
 */
public record SpotNearby(String label, List<RecordId> toLabel) {
    /** Readings nearer than this to a spot's first one belong to it. */
    public static final double WITHIN_MM = 40;

    public SpotNearby {
        Objects.requireNonNull(label, "label");
        toLabel = List.copyOf(toLabel);
    }

    /**
     * Empty if no spot lies near enough.
     *
     * @param readings of the zone, in the order of the visit; those that were excluded found no spot
     */
    public static Optional<SpotNearby> of(List<Recorded<Reading>> readings, ViewPoint point, PointDistance distance) {
        Set<String> begun = new HashSet<>();
        Optional<Recorded<Reading>> nearest = Optional.empty();
        double least = WITHIN_MM;
        for (Recorded<Reading> row : readings) {
            Reading reading = row.value();
            boolean first = reading.exclude().isEmpty()
                    && reading.point().isPresent()
                    && reading.spot().map(begun::add).orElse(true);
            if (first) {
                double mm = distance.mm(reading.point().get(), point).orElse(Double.POSITIVE_INFINITY);
                if (mm <= least) {
                    least = mm;
                    nearest = Optional.of(row);
                }
            }
        }
        return nearest.map(row -> joined(row, readings));
    }

    private static SpotNearby joined(Recorded<Reading> row, List<Recorded<Reading>> readings) {
        return row.value()
                .spot()
                .map(label -> new SpotNearby(label, List.of()))
                .orElseGet(() -> new SpotNearby(unused(readings), List.of(row.id())));
    }

    /** The least number that labels no spot of these readings. */
    public static String unused(List<Recorded<Reading>> readings) {
        List<String> used = new ArrayList<>();
        readings.forEach(row -> row.value().spot().ifPresent(used::add));
        int number = 1;
        while (used.contains(Integer.toString(number))) {
            number++;
        }
        return Integer.toString(number);
    }
}
