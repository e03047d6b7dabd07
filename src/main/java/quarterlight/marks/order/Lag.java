package quarterlight.marks.order;

/**
 * How many days the event {@code later} may come after the event {@code earlier}.
 *
 * @param earlier number of the event that comes first
 * @param later number of the event that comes after it
 * @param leastDays least number of days between; below 0 if it may come before
 * @param mostDays greatest number of days between
 */
public record Lag(int earlier, int later, long leastDays, long mostDays) {
    public Lag {
        if (mostDays < leastDays) {
            throw new IllegalArgumentException("at most " + mostDays + " days is less than at least " + leastDays);
        }
        if (earlier == later) {
            throw new IllegalArgumentException("an event comes neither before nor after itself");
        }
    }
}
