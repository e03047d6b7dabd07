package quarterlight.units;

/**
 * A coating thickness; micrometres inside. Immutable.
 * <p>1 mil = 25.4 um exactly, since 1 in = 25.4 mm exactly (NIST SP 811, from memory).
 *
 * @param um micrometres, finite; may be below zero after a gauge correction
 */
public record Thickness(double um) implements Comparable<Thickness> {
    public Thickness {
        if (!Double.isFinite(um)) {
            throw new IllegalArgumentException("a thickness is a finite number of um, not " + um);
        }
    }

    public static Thickness of(double value, ThicknessUnit unit) {
        return new Thickness(unit.toUm(value));
    }

    public double in(ThicknessUnit unit) {
        return unit.fromUm(um);
    }

    public double mils() {
        return in(ThicknessUnit.MIL);
    }

    @Override
    public int compareTo(Thickness other) {
        return Double.compare(um, other.um);
    }
}
