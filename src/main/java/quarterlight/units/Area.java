package quarterlight.units;

/**
 * A surface on the car; square millimetres inside. Immutable.
 *
 * @param mm2 square millimetres, finite, 0 or more
 */
public record Area(double mm2) implements Comparable<Area> {
    public Area {
        if (!Double.isFinite(mm2) || mm2 < 0) {
            throw new IllegalArgumentException("an area is 0 mm2 or more, not " + mm2);
        }
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(mm2, other.mm2);
    }
}
