package quarterlight.ui.photos.clock;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * Seconds laid out over a width. What lies more than two days from the middle is drawn at the edge, so that a clock years off does not
 * press all others into one point.
 *
 * @param from second at the left
 * @param width px
 */
record TimeAxis(long from, long to, int width) {
    private static final long MAX_REACH_S = Duration.ofDays(2).toSeconds();
    private static final long MARGIN = 30;
    private static final int APART_PX = 90;
    private static final List<Long> STEPS =
            List.of(60L, 300L, 600L, 900L, 1800L, 3600L, 7200L, 14_400L, 21_600L, 43_200L, 86_400L);

    /** @param seconds at least one */
    static TimeAxis of(List<Long> seconds, int width) {
        List<Long> sorted = seconds.stream().sorted().toList();
        long middle = sorted.get(sorted.size() / 2);
        long from = Math.max(sorted.get(0), middle - MAX_REACH_S);
        long to = Math.min(sorted.get(sorted.size() - 1), middle + MAX_REACH_S);
        return new TimeAxis(from - MARGIN, Math.max(to, from + 2 * MARGIN) + MARGIN, Math.max(1, width));
    }

    int x(long at) {
        double share = (at - from) / (double) (to - from);
        return (int) Math.round(width * Math.max(0, Math.min(1, share)));
    }

    /** Round times far enough apart to be written beside each other. */
    List<Long> ticks() {
        long least = (to - from) * APART_PX / width;
        long step = STEPS.stream().filter(s -> s >= least).findFirst().orElse(STEPS.get(STEPS.size() - 1));
        List<Long> ticks = new ArrayList<>();
        for (long at = Math.floorDiv(from, step) * step + step; at < to; at += step) {
            ticks.add(at);
        }
        return ticks;
    }
}
