package quarterlight.finish.place;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import quarterlight.visit.pin.ViewPoint;

/**
 * For each spot of a panel all its spots in the order of their nearness, itself first. Distances are measured against how far the spots spread
 * along x and along y, so that neither the size of the panel nor the scale of the view is needed. Immutable.
 *
 * @param order {@code order.get(c).get(k)} is the k-th nearest spot to spot c
 */
public record SpotNeighbors(List<List<Integer>> order) {
    /** Fewer spots cannot lie together or apart. */
    public static final int LEAST = 3;

    /** The narrower spread counts as this share of the wider at least: spots in a row have no second direction. Judgement. */
    private static final double NARROW = 0.25;

    public SpotNeighbors {
        order = order.stream().map(List::copyOf).toList();
    }

    /** @return empty for fewer than three spots, or where they do not all lie in one view */
    public static Optional<SpotNeighbors> of(List<ViewPoint> places) {
        if (places.size() < LEAST
                || places.stream().map(ViewPoint::view).distinct().count() > 1) {
            return Optional.empty();
        }
        double wide = spread(places.stream().mapToDouble(ViewPoint::x).toArray());
        double high = spread(places.stream().mapToDouble(ViewPoint::y).toArray());
        double most = Math.max(wide, high);
        if (most <= 0) {
            return Optional.empty();
        }
        double perX = 1 / Math.max(wide, NARROW * most);
        double perY = 1 / Math.max(high, NARROW * most);
        return Optional.of(new SpotNeighbors(IntStream.range(0, places.size())
                .mapToObj(center -> nearest(center, places, perX, perY))
                .toList()));
    }

    private static List<Integer> nearest(int center, List<ViewPoint> places, double perX, double perY) {
        ViewPoint here = places.get(center);
        return IntStream.range(0, places.size())
                .boxed()
                .sorted(Comparator.comparing((Integer n) -> n != center)
                        .thenComparingDouble(n -> Math.hypot(
                                (places.get(n).x() - here.x()) * perX,
                                (places.get(n).y() - here.y()) * perY)))
                .toList();
    }

    private static double spread(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return most - least;
    }
}
