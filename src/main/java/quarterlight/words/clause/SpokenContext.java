package quarterlight.words.clause;

import java.util.Optional;
import quarterlight.words.place.CarZones;

/** What was heard of the walk as a whole and holds until something else is said: the unit of the readings. One per walk. */
public final class SpokenContext {
    private Optional<String> unit = Optional.empty();
    public final CarZones car;

    public SpokenContext(CarZones car) {
        this.car = car;
    }

    public void unit(String said) {
        unit = Optional.of(said);
    }

    public Optional<String> unit() {
        return unit;
    }
}
