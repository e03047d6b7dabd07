package quarterlight.ui.gauge.history;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.finish.SupposedEvidence;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.SignKind;

/**
 * Readings and signs supposed of one zone, each reading a spot of its own, to see the likelihood move before they are kept. Immutable.
 *
 * @param signs in the order supposed: true for seen
 */
record WhatIf(ZoneId zone, List<GaugeValue> values, Map<SignKind, Boolean> signs) {
    WhatIf {
        Objects.requireNonNull(zone, "zone");
        values = List.copyOf(values);
        signs = Collections.unmodifiableMap(new LinkedHashMap<>(signs));
    }

    static WhatIf nothing(ZoneId zone) {
        return new WhatIf(zone, List.of(), Map.of());
    }

    boolean isNothing() {
        return values.isEmpty() && signs.isEmpty();
    }

    WhatIf and(GaugeValue value) {
        List<GaugeValue> more = new ArrayList<>(values);
        more.add(value);
        return new WhatIf(zone, more, signs);
    }

    WhatIf and(SignKind kind, boolean seen) {
        Map<SignKind, Boolean> more = new LinkedHashMap<>(signs);
        more.remove(kind);
        more.put(kind, seen);
        return new WhatIf(zone, values, more);
    }

    /** What the finish history makes of it. */
    SupposedEvidence evidence(GaugeCorrection correction) {
        List<Double> spots = values.stream()
                .filter(GaugeValue.Measured.class::isInstance)
                .map(value -> correction
                        .apply(((GaugeValue.Measured) value).thickness())
                        .um())
                .toList();
        return new SupposedEvidence(
                zone, spots, count(GaugeValue.OverRange.class), count(GaugeValue.NoMetal.class), signs);
    }

    private int count(Class<? extends GaugeValue> type) {
        return (int) values.stream().filter(type::isInstance).count();
    }

    /** The readings to keep. */
    List<Reading> readings(LocalDateTime now, Optional<GaugeMode> mode) {
        return values.stream()
                .map(value -> new Reading(
                        zone,
                        value,
                        Optional.of(now),
                        Optional.empty(),
                        Optional.empty(),
                        mode,
                        Optional.empty(),
                        Optional.empty()))
                .toList();
    }

    /** The signs to keep. */
    List<Sign> signRows() {
        return signs.entrySet().stream()
                .map(sign -> new Sign(
                        zone, sign.getKey(), sign.getValue(), Optional.empty(), Optional.empty(), Optional.empty()))
                .toList();
    }
}
