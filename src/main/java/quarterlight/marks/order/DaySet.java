package quarterlight.marks.order;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A set of days as stretches that neither touch nor overlap, in order. Immutable.
 *
 * @param stretches from, to (both within); empty for no day
 */
public record DaySet(List<Stretch> stretches) {
    /** Days that no car falls out of: every day that such a set can hold. */
    public static final DaySet ALL = of(List.of(new Stretch(
            LocalDate.of(1800, 1, 1).toEpochDay(), LocalDate.of(2200, 12, 31).toEpochDay())));

    /** Days from the one to the other, both within, counted from 1970-01-01. */
    public record Stretch(long from, long to) {
        public Stretch {
            if (to < from) {
                throw new IllegalArgumentException("the last day " + to + " lies before the first " + from);
            }
        }

        public LocalDate first() {
            return LocalDate.ofEpochDay(from);
        }

        public LocalDate last() {
            return LocalDate.ofEpochDay(to);
        }
    }

    public DaySet {
        stretches = List.copyOf(stretches);
    }

    /** The union of stretches in any order, which may overlap. */
    public static DaySet of(List<Stretch> any) {
        List<Stretch> sorted = new ArrayList<>(any);
        sorted.sort(Comparator.comparingLong(Stretch::from));
        List<Stretch> joined = new ArrayList<>();
        for (Stretch next : sorted) {
            int last = joined.size() - 1;
            if (last >= 0 && next.from() <= joined.get(last).to() + 1) {
                Stretch before = joined.get(last);
                joined.set(last, new Stretch(before.from(), Math.max(before.to(), next.to())));
            } else {
                joined.add(next);
            }
        }
        return new DaySet(joined);
    }

    public static DaySet of(LocalDate from, LocalDate to) {
        return of(List.of(new Stretch(from.toEpochDay(), to.toEpochDay())));
    }

    public boolean isEmpty() {
        return stretches.isEmpty();
    }

    public boolean holds(long day) {
        return stretches.stream().anyMatch(s -> s.from() <= day && day <= s.to());
    }

    /** True if some day from the one to the other is in the set. */
    public boolean meets(LocalDate from, LocalDate to) {
        return stretches.stream().anyMatch(s -> s.from() <= to.toEpochDay() && s.to() >= from.toEpochDay());
    }

    public DaySet and(DaySet other) {
        List<Stretch> both = new ArrayList<>();
        for (Stretch a : stretches) {
            for (Stretch b : other.stretches) {
                long from = Math.max(a.from(), b.from());
                long to = Math.min(a.to(), b.to());
                if (from <= to) {
                    both.add(new Stretch(from, to));
                }
            }
        }
        return of(both);
    }

    /** Every day that lies {@code least} to {@code most} days after some day of this set; less than 0 is before. */
    DaySet after(long least, long most) {
        return of(stretches.stream()
                .map(s -> new Stretch(s.from() + least, s.to() + most))
                .toList());
    }
}
