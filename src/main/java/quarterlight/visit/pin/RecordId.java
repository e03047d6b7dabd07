package quarterlight.visit.pin;

/** The number of a recorded row within its table of the visit. */
public record RecordId(long value) {
    @Override
    public String toString() {
        return Long.toString(value);
    }
}
