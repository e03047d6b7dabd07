package quarterlight.car;

import java.util.regex.Pattern;

/**
 * The id of a zone as the zone table has it: {@code quarter-left}.
 *
 * @param value lower-case words and hyphens
 */
public record ZoneId(String value) implements Comparable<ZoneId> {
    private static final Pattern FORM = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    public ZoneId {
        if (!isWellFormed(value)) {
            throw new IllegalArgumentException("a zone id is made of lower-case words and hyphens, not: " + value);
        }
    }

    public static boolean isWellFormed(String text) {
        return FORM.matcher(text).matches();
    }

    @Override
    public int compareTo(ZoneId other) {
        return value.compareTo(other.value);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ZoneId zone && zone.value.equals(value);
    }

    @Override
    public int hashCode() {
        return value.hashCode();
    }

    @Override
    public String toString() {
        return value;
    }
}
