package quarterlight.ui.gauge.entry;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/**
 * Where the next reading goes: the zone, the point if one was clicked, and the spot it joins. Event thread only.
 * <p>Each reading is a spot of its own unless several are taken at a place; then that many in a row make one spot.
 */
public final class GaugeEntry {
    private Optional<ZoneId> zone = Optional.empty();
    private Optional<ViewPoint> point = Optional.empty();
    private int atEachPlace = 1;
    private int inSpot;
    private Optional<String> spot = Optional.empty();
    private Optional<GaugeMode> mode = Optional.empty();

    /** The principle that readings are noted with. */
    public Optional<GaugeMode> mode() {
        return mode;
    }

    public void mode(Optional<GaugeMode> chosen) {
        mode = chosen;
    }

    public Optional<ZoneId> zone() {
        return zone;
    }

    /** True if the next value goes to a point that was clicked. */
    public boolean atPoint() {
        return point.isPresent();
    }

    int atEachPlace() {
        return atEachPlace;
    }

    /** Goes to a zone, at a point if one was clicked; a new spot begins. */
    public void go(ZoneId next, Optional<ViewPoint> at) {
        zone = Optional.of(next);
        point = at;
        inSpot = 0;
        spot = Optional.empty();
    }

    /** @param readings how many readings make one spot, 1 or more */
    public void takeAtEachPlace(int readings) {
        atEachPlace = Math.max(1, readings);
        inSpot = 0;
        spot = Optional.empty();
    }

    /** The reading to keep for a value; the next one joins its spot or begins a new one. */
    public Optional<Reading> next(GaugeValue value, VisitRecord visit, LocalDateTime now) {
        if (zone.isEmpty()) {
            return Optional.empty();
        }
        if (atEachPlace > 1 && inSpot == 0) {
            spot = Optional.of(fresh(visit));
        }
        Reading reading =
                new Reading(zone.get(), value, Optional.of(now), spot, point, mode, Optional.empty(), Optional.empty());
        inSpot = (inSpot + 1) % atEachPlace;
        if (inSpot == 0) {
            spot = Optional.empty();
            point = Optional.empty();
        }
        return Optional.of(reading);
    }

    /** A label that no spot of the zone bears. */
    private String fresh(VisitRecord visit) {
        Set<String> used = visit.readings().stream()
                .map(Recorded::value)
                .filter(reading -> reading.zone().equals(zone.orElseThrow()))
                .flatMap(reading -> reading.spot().stream())
                .collect(Collectors.toSet());
        OptionalInt number = java.util.stream.IntStream.rangeClosed(1, used.size() + 1)
                .filter(n -> !used.contains(Integer.toString(n)))
                .findFirst();
        return Integer.toString(number.orElseThrow());
    }

    /** The readings of the zone in hand, in the order of the visit. */
    public List<Recorded<Reading>> here(VisitRecord visit) {
        return visit.readings().stream()
                .filter(row -> zone.filter(row.value().zone()::equals).isPresent())
                .toList();
    }
}
