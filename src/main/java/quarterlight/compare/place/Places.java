package quarterlight.compare.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;

/**
 * Every place of some cars, in the order of the zone table: zones of the same name, zones of unlike bodies that correspond, and
 * zones that one body alone has. Every zone of every car stands in exactly one place. Immutable.
 */
public final class Places {
    private final List<Place> all;

    private Places(List<Place> all) {
        this.all = List.copyOf(all);
    }

    public static Places of(List<Body> bodies, ZoneCatalog catalog, List<Counterpart> counterparts) {
        return new Places(new Laying(bodies, catalog, counterparts).places());
    }

    public List<Place> all() {
        return all;
    }

    /** The places that every car has. */
    public List<Place> shared() {
        return all.stream().filter(Place::isShared).toList();
    }

    /** The places that some car lacks. */
    public List<Place> apart() {
        return all.stream().filter(place -> !place.isShared()).toList();
    }

    /** The place of a zone; empty for a zone that none of the cars has. */
    public Optional<Place> of(ZoneId zone) {
        return all.stream().filter(place -> place.holds(zone)).findFirst();
    }

    /** The place of a zone, on one car: zones that another car has in a place of its own do not count. */
    public Optional<Place> of(int car, ZoneId zone) {
        return all.stream()
                .filter(place -> place.on(car).stream().anyMatch(one -> one.id().equals(zone)))
                .findFirst()
                .or(() -> of(zone));
    }

    /** Lays the zones of cars together. */
    private static final class Laying {
        private final List<List<Zone>> cars;
        private final List<Set<ZoneId>> left;
        private final List<Counterpart> counterparts;
        private final ZoneCatalog catalog;

        Laying(List<Body> bodies, ZoneCatalog catalog, List<Counterpart> counterparts) {
            this.catalog = catalog;
            this.counterparts = counterparts;
            this.cars = bodies.stream().map(catalog::zonesOf).toList();
            this.left = cars.stream()
                    .<Set<ZoneId>>map(
                            zones -> zones.stream().map(Zone::id).collect(Collectors.toCollection(LinkedHashSet::new)))
                    .toList();
        }

        List<Place> places() {
            List<Place> places = new ArrayList<>();
            counterparts.forEach(one -> laidTogether(one).ifPresent(places::add));
            for (Zone zone : catalog.all()) {
                List<List<Zone>> here = left.stream()
                        .map(zones -> zones.contains(zone.id()) ? List.of(zone) : List.<Zone>of())
                        .toList();
                if (here.stream().anyMatch(zones -> !zones.isEmpty())) {
                    places.add(new Place(zone.label(), here, Optional.empty()));
                }
            }
            List<Zone> order = catalog.all();
            places.sort(Comparator.comparingInt(place -> order.indexOf(place.first())));
            return places;
        }

        /** The zones of a counterpart as one place, unless the cars that have it have it in the same zones. */
        private Optional<Place> laidTogether(Counterpart one) {
            List<List<ZoneId>> here =
                    left.stream().map(zones -> one.on(zones).orElse(List.of())).toList();
            Set<List<ZoneId>> kinds = new HashSet<>(here);
            kinds.remove(List.of());
            if (kinds.size() < 2) {
                return Optional.empty();
            }
            List<List<Zone>> zones = new ArrayList<>();
            for (int car = 0; car < here.size(); car++) {
                left.get(car).removeAll(here.get(car));
                zones.add(here.get(car).stream().map(catalog::get).toList());
            }
            return Optional.of(new Place(one.name(), zones, Optional.of(one)));
        }
    }

    /** Zones of one car beyond those of its body, each in a place of its own: a statement may name one. */
    public Places with(int car, Stream<Zone> strays) {
        List<Place> more = new ArrayList<>(all);
        strays.distinct().filter(zone -> of(zone.id()).isEmpty()).forEach(zone -> {
            List<List<Zone>> here = new ArrayList<>();
            int cars = all.isEmpty() ? car + 1 : all.get(0).zones().size();
            for (int i = 0; i < cars; i++) {
                here.add(i == car ? List.of(zone) : List.of());
            }
            more.add(new Place(zone.label(), here, Optional.empty()));
        });
        return new Places(more);
    }
}
