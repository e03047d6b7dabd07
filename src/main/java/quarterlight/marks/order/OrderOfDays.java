package quarterlight.marks.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Works out which days remain for each event once lags between events hold, by propagating sets of days.
 * <p>Each lag narrows both of its events to the days that have a partner on the other side, again and again until nothing
 * changes (arc consistency, A. K. Mackworth, Consistency in networks of relations, Artificial Intelligence 8, 1977). Where the lags form
 * a forest (no two ways lead from one event to another) what remains is exact: each remaining day is part of some choice of one day
 * for every event (E. C. Freuder, A sufficient condition for backtrack-free search, Journal of the ACM 29, 1982). Lags that close a
 * ring are refused.
 * <p>Lags are taken one by one, in the order given. One that would leave an event without a day is set aside as a clash, with what was
 * known before it, and the rest goes on without it.
 *
 * @param remaining days left for each event, by its number
 * @param clashes lags that do not go together with those before them
 */
public record OrderOfDays(List<DaySet> remaining, List<Clash> clashes) {
    /**
     * A lag that cannot hold.
     *
     * @param earlier days that were left for the earlier event
     * @param later days that were left for the later event
     */
    public record Clash(Lag lag, DaySet earlier, DaySet later) {}

    public OrderOfDays {
        remaining = List.copyOf(remaining);
        clashes = List.copyOf(clashes);
    }

    /**
     * Propagates.
     *
     * @param days for each event the days it can have, none of them empty
     * @throws IllegalArgumentException if an event has no day, or two ways lead from one event to another
     */
    public static OrderOfDays of(List<DaySet> days, List<Lag> lags) {
        if (days.stream().anyMatch(DaySet::isEmpty)) {
            throw new IllegalArgumentException("an event has no day at all");
        }
        List<DaySet> left = new ArrayList<>(days);
        List<Lag> held = new ArrayList<>();
        List<Clash> clashes = new ArrayList<>();
        int[] tree = new int[days.size()];
        for (int i = 0; i < tree.length; i++) {
            tree[i] = i;
        }
        for (Lag lag : lags) {
            join(tree, lag);
            held.add(lag);
            List<DaySet> tried = new ArrayList<>(left);
            if (propagate(tried, held, lag)) {
                left = tried;
            } else {
                held.remove(lag);
                clashes.add(new Clash(lag, left.get(lag.earlier()), left.get(lag.later())));
            }
        }
        return new OrderOfDays(left, clashes);
    }

    private static void join(int[] tree, Lag lag) {
        int a = tree[lag.earlier()];
        int b = tree[lag.later()];
        if (a == b) {
            throw new IllegalArgumentException("two ways lead from event " + lag.earlier() + " to " + lag.later());
        }
        for (int i = 0; i < tree.length; i++) {
            tree[i] = tree[i] == a ? b : tree[i];
        }
    }

    /** False as soon as an event is left without a day. */
    private static boolean propagate(List<DaySet> left, List<Lag> lags, Lag first) {
        Deque<Lag> open = new ArrayDeque<>(List.of(first));
        while (!open.isEmpty()) {
            Lag lag = open.removeFirst();
            DaySet earlier = left.get(lag.earlier());
            DaySet later = left.get(lag.later());
            DaySet narrowLater = later.and(earlier.after(lag.leastDays(), lag.mostDays()));
            DaySet narrowEarlier = earlier.and(later.after(-lag.mostDays(), -lag.leastDays()));
            if (narrowLater.isEmpty() || narrowEarlier.isEmpty()) {
                return false;
            }
            narrow(left, lags, open, lag, lag.later(), narrowLater);
            narrow(left, lags, open, lag, lag.earlier(), narrowEarlier);
        }
        return true;
    }

    private static void narrow(List<DaySet> left, List<Lag> lags, Deque<Lag> open, Lag by, int event, DaySet days) {
        if (days.equals(left.get(event))) {
            return;
        }
        left.set(event, days);
        for (Lag lag : lags) {
            boolean touches = lag.earlier() == event || lag.later() == event;
            if (touches && !lag.equals(by) && !open.contains(lag)) {
                open.addLast(lag);
            }
        }
    }
}
