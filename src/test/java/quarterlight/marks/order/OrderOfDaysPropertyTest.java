package quarterlight.marks.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import quarterlight.marks.order.DaySet.Stretch;

/** What propagation leaves is what trying every choice of days leaves, over small ranges of days. */
class OrderOfDaysPropertyTest {
    private static final int DAYS = 9;
    private static final int TRIALS = 4000;

    @Test
    void whatRemainsIsExactlyWhatTryingEveryChoiceLeaves() {
        int withClash = 0;
        for (long seed = 1; seed <= TRIALS; seed++) {
            Random random = new Random(seed);
            int events = 2 + random.nextInt(3);
            List<DaySet> days = new ArrayList<>();
            for (int i = 0; i < events; i++) {
                days.add(some(random));
            }
            List<Lag> lags = new ArrayList<>();
            for (int i = 1; i < events; i++) {
                int other = random.nextInt(i);
                int least = random.nextInt(4) - 1;
                int most = least + random.nextInt(4);
                lags.add(random.nextBoolean() ? new Lag(i, other, least, most) : new Lag(other, i, least, most));
            }
            OrderOfDays order = OrderOfDays.of(days, lags);
            List<Lag> held = new ArrayList<>(lags);
            order.clashes().forEach(clash -> held.remove(clash.lag()));
            List<Set<Long>> brute = brute(days, held);
            for (int i = 0; i < events; i++) {
                assertThat(listed(order.remaining().get(i)))
                        .as("seed %d event %d", seed, i)
                        .isEqualTo(brute.get(i));
            }
            for (OrderOfDays.Clash clash : order.clashes()) {
                List<Lag> before = lags.subList(0, lags.indexOf(clash.lag())).stream()
                        .filter(held::contains)
                        .toList();
                List<Lag> with = new ArrayList<>(before);
                with.add(clash.lag());
                assertThat(brute(days, with).get(0))
                        .as("seed %d: a clash is one", seed)
                        .isEmpty();
                assertThat(listed(clash.earlier()))
                        .as("seed %d: days before the clash", seed)
                        .isEqualTo(brute(days, before).get(clash.lag().earlier()));
            }
            withClash += order.clashes().isEmpty() ? 0 : 1;
        }
        assertThat(withClash).as("both kinds of case occur").isBetween(TRIALS / 10, TRIALS * 9 / 10);
    }

    private static DaySet some(Random random) {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            int from = random.nextInt(DAYS);
            stretches.add(new Stretch(from, Math.min(DAYS - 1, from + random.nextInt(3))));
        }
        return DaySet.of(stretches);
    }

    private static Set<Long> listed(DaySet days) {
        Set<Long> all = new TreeSet<>();
        days.stretches().forEach(s -> {
            for (long day = s.from(); day <= s.to(); day++) {
                all.add(day);
            }
        });
        return all;
    }

    /** For each event the days that are part of some choice of a day for every event. */
    private static List<Set<Long>> brute(List<DaySet> days, List<Lag> lags) {
        List<Set<Long>> possible = new ArrayList<>();
        days.forEach(day -> possible.add(new TreeSet<>()));
        choose(days, lags, new long[days.size()], 0, possible);
        return possible;
    }

    private static void choose(List<DaySet> days, List<Lag> lags, long[] chosen, int next, List<Set<Long>> possible) {
        if (next < chosen.length) {
            for (long day : listed(days.get(next))) {
                chosen[next] = day;
                choose(days, lags, chosen, next + 1, possible);
            }
            return;
        }
        boolean holds = lags.stream().allMatch(lag -> {
            long between = chosen[lag.later()] - chosen[lag.earlier()];
            return between >= lag.leastDays() && between <= lag.mostDays();
        });
        if (holds) {
            for (int i = 0; i < chosen.length; i++) {
                possible.get(i).add(chosen[i]);
            }
        }
    }

    @Test
    void aRingIsRefused() {
        List<DaySet> days = List.of(DaySet.ALL, DaySet.ALL, DaySet.ALL);
        List<Lag> ring = List.of(new Lag(0, 1, 0, 5), new Lag(1, 2, 0, 5), new Lag(2, 0, 0, 5));
        assertThatThrownBy(() -> OrderOfDays.of(days, ring)).hasMessageContaining("two ways");
    }
}
