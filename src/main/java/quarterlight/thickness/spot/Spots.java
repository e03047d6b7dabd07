package quarterlight.thickness.spot;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/** Groups the readings of one zone into spots, in the order in which each spot was first touched. */
public final class Spots {
    private final GaugeCorrection correction;

    public Spots(GaugeCorrection correction) {
        this.correction = correction;
    }

    /** @param readings of one zone, none excluded */
    public List<Spot> of(List<Recorded<Reading>> readings) {
        Map<String, List<Recorded<Reading>>> groups = new LinkedHashMap<>();
        for (Recorded<Reading> reading : readings) {
            String key = label(reading.value())
                    .map(text -> "label " + text)
                    .orElse("row " + reading.id().value());
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(reading);
        }
        return groups.values().stream().map(this::spot).toList();
    }

    private static Optional<String> label(Reading reading) {
        return reading.spot().map(String::strip).filter(text -> !text.isEmpty());
    }

    private Spot spot(List<Recorded<Reading>> group) {
        Optional<String> label = label(group.get(0).value());
        List<RecordId> rows = group.stream().map(Recorded::id).toList();
        OptionalDouble mean = group.stream()
                .map(reading -> reading.value().value())
                .filter(GaugeValue.Measured.class::isInstance)
                .mapToDouble(value -> correction.um((GaugeValue.Measured) value))
                .average();
        if (mean.isPresent()) {
            return new Spot(label, SpotKind.VALUE, mean, rows);
        }
        boolean over = group.stream().anyMatch(reading -> reading.value().value() instanceof GaugeValue.OverRange);
        return new Spot(label, over ? SpotKind.OVER : SpotKind.NO_METAL, OptionalDouble.empty(), rows);
    }
}
