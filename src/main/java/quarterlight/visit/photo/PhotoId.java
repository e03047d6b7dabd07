package quarterlight.visit.photo;

/** The number of a photo or film within its visit. */
public record PhotoId(long value) implements Comparable<PhotoId> {
    @Override
    public int compareTo(PhotoId other) {
        return Long.compare(value, other.value);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PhotoId photo && photo.value == value;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(value);
    }

    @Override
    public String toString() {
        return Long.toString(value);
    }
}
