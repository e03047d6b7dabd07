package quarterlight.words.clash;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import quarterlight.car.ZoneId;
import quarterlight.visit.statement.Facets;

/**
 * Something that is asserted of the car, in a form that can be laid against another.
 *
 * @param zones of which it is said; none for the whole car
 * @param said what is said
 * @param from who says so
 */
record Assertion(List<ZoneId> zones, Said said, Testimony from) {
    /** What can be said. */
    sealed interface Said {}

    /** @param part the part within the zone; empty for the zone itself */
    record Stated(String part, Facets facets) implements Said {}

    /** @param kind a sign of refinishing, by its word */
    record SignSeen(String kind, boolean seen) implements Said {}

    record Tried(String item, String result) implements Said {}

    /** @param kind vin, plate, stamp and so on */
    record Marked(String part, String kind, String text) implements Said {}

    /** @param source read, told or papers */
    record Mileage(double figure, String source) implements Said {}

    record Measured(double lowUm, double highUm) implements Said {}

    /** @param what said of the whole car or a whole zone: first finish, no rust, never hit, all works, numbers match, no leaks */
    record Sweeping(String what) implements Said {}

    Assertion {
        Objects.requireNonNull(said, "said");
        Objects.requireNonNull(from, "from");
        zones = List.copyOf(zones);
    }

    /** Both are about one zone, or one of them is about the whole car. */
    boolean meets(Assertion other) {
        return zones.isEmpty() || other.zones.isEmpty() || sharesZone(other);
    }

    boolean sharesZone(Assertion other) {
        return zones.stream().anyMatch(other.zones::contains);
    }

    /** The zones that both are about; those of the one if the other is about the whole car. */
    List<ZoneId> common(Assertion other) {
        if (zones.isEmpty()) {
            return other.zones;
        }
        return other.zones.isEmpty()
                ? zones
                : zones.stream().filter(other.zones::contains).toList();
    }

    /** The name of a part as it is compared; empty if it says no more than the zone. */
    static String part(String name, List<ZoneId> zones) {
        String plain = name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return zones.stream().anyMatch(zone -> zone.value().contains(plain.replace(' ', '-'))) ? "" : plain;
    }
}
