package quarterlight.finish;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.CountDistribution;
import quarterlight.finish.model.CarPosterior;
import quarterlight.finish.model.HeldNumbers;

/** The finish history of a car with what ties its zones together, for questions about several zones at once. Immutable. */
public final class JointHistory {
    private final FinishEvidence evidence;
    private final PanelPlaces places;
    private final CarPosterior car;
    private final FinishHistory history;

    JointHistory(FinishEvidence evidence, PanelPlaces places, CarPosterior car, FinishHistory history) {
        this.evidence = evidence;
        this.places = places;
        this.car = car;
        this.history = history;
    }

    public FinishHistory history() {
        return history;
    }

    public FinishEvidence evidence() {
        return evidence;
    }

    /** All zones that have a likelihood, in the order of the zone table. */
    public Set<ZoneId> zones() {
        Set<ZoneId> ids = new LinkedHashSet<>();
        history.zones().forEach(zone -> ids.add(zone.zone()));
        return ids;
    }

    /**
     * How many of these zones are not factory finish.
     *
     * @param among zones of this car with a likelihood; an empty set gives a count of 0
     * @throws IllegalArgumentException if the car lacks one of them
     */
    public CountDistribution notFactory(Set<ZoneId> among) {
        return count(among, false);
    }

    /** How many of these zones are refinished over filler; as {@link #notFactory}. */
    public CountDistribution filler(Set<ZoneId> among) {
        return count(among, true);
    }

    /** Where more spots would settle most: doubtful readings first. */
    public List<NextMeasurement> next() {
        return NextMeasurement.of(this, car, places);
    }

    /**
     * Which assumption, if wrong, would change each finding most. Takes several times as long as the history itself.
     *
     * @return by zone, of the zones that have a likelihood
     */
    public Map<ZoneId, HeldNumbers.Sway> hangsOn() {
        List<HeldNumbers.Sway> sways = HeldNumbers.of(car);
        Map<ZoneId, HeldNumbers.Sway> found = new LinkedHashMap<>();
        zones().forEach(zone -> found.put(zone, sways.get(places.of(zone))));
        return found;
    }

    private CountDistribution count(Set<ZoneId> among, boolean repair) {
        if (!zones().containsAll(among)) {
            throw new IllegalArgumentException("the car has not all of the zones " + among);
        }
        List<Integer> indices = among.stream().sorted().map(places::of).toList();
        double[] chances = car.counts(indices, repair);
        double sum = Arrays.stream(chances).sum();
        return new CountDistribution(
                Arrays.stream(chances).map(chance -> chance / sum).boxed().toList());
    }
}
