package quarterlight.coverage;

import java.util.List;
import java.util.Objects;
import quarterlight.car.Zone;
import quarterlight.units.Worded;

/**
 * How far one zone is covered by evidence, for a list and for a layer of the diagram.
 *
 * @param asked kinds of evidence asked of it (each identity mark's views count as one); 0 if nothing is
 * @param begun of those, how many have some evidence
 * @param gaps what it lacks
 */
public record ZoneCoverage(Zone zone, int asked, int begun, List<Gap> gaps) {
    /** How a zone stands. */
    public enum State implements Worded {
        /** Nothing is asked of it. */
        NOT_ASKED,
        /** Everything that is asked for is there. */
        FULL,
        /** Some evidence is there and some is lacking. */
        PARTLY,
        /** Evidence is asked for and none is there. */
        MISSING
    }

    public ZoneCoverage {
        Objects.requireNonNull(zone, "zone");
        gaps = List.copyOf(gaps);
        if (begun < 0 || begun > asked || gaps.size() > asked) {
            throw new IllegalArgumentException(
                    begun + " begun and " + gaps.size() + " lacking of " + asked + " that are asked for");
        }
    }

    public State state() {
        if (asked == 0) {
            return State.NOT_ASKED;
        }
        return gaps.isEmpty() ? State.FULL : begun > 0 ? State.PARTLY : State.MISSING;
    }
}
