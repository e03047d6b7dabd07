package quarterlight.words.rule;

import java.util.Optional;
import quarterlight.words.place.CarZones;

/** What was heard of the walk as a whole and holds until something else is said: the unit of the readings. One per walk. */
final class Ear {
    private Optional<String> unit = Optional.empty();
    final CarZones car;

    Ear(CarZones car) {
        this.car = car;
    }

    void unit(String said) {
        unit = Optional.of(said);
    }

    Optional<String> unit() {
        return unit;
    }
}
