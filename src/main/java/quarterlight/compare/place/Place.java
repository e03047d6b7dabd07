package quarterlight.compare.place;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;

/**
 * One place of several cars.
 *
 * @param zones its zones on each car, in the order of the cars; none where a car does not have it
 * @param counterpart why unlike zones stand together, if they do
 */
public record Place(String label, List<List<Zone>> zones, Optional<Counterpart> counterpart) {
    public Place {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(counterpart, "counterpart");
        zones = zones.stream().map(List::copyOf).toList();
    }

    /** Its zones on one car. */
    public List<Zone> on(int car) {
        return zones.get(car);
    }

    /** Whether every car has it. */
    public boolean isShared() {
        return zones.stream().noneMatch(List::isEmpty);
    }

    /** Whether it is a zone of some car. */
    public boolean holds(ZoneId zone) {
        return zones.stream().flatMap(List::stream).anyMatch(one -> one.id().equals(zone));
    }

    /** What it is called on one car; blank where the car does not have it. */
    public String labelOn(int car) {
        return on(car).stream().map(Zone::label).collect(Collectors.joining(" " + say("common.and") + " "));
    }

    /** The first zone that any car has here: where it stands in the order of the zone table. */
    public Zone first() {
        return zones.stream().flatMap(List::stream).findFirst().orElseThrow();
    }
}
