package quarterlight.walk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/**
 * How often the true zone of an unpinned photo stands first, or among the first three, when a tenth of the photos is pinned evenly:
 * by a way of suggesting, and by the plain rule "same zone as the pinned photo nearest in time". Shares are of the unpinned photos.
 */
public record Yardstick(int photos, double first, double firstThree, Reliability reliability) {
    static final int PIN_EVERY = 10;

    /** Shots of a walk with every tenth photo pinned to its true zone, from the fifth on. */
    public static List<Shot> pinned(List<Snap> snaps) {
        return shots(snaps, PIN_EVERY);
    }

    /** Shots of a walk with all photos pinned, as an earlier visit is. */
    public static List<Shot> allPinned(List<Snap> snaps) {
        return shots(snaps, 1);
    }

    private static List<Shot> shots(List<Snap> snaps, int every) {
        return IntStream.range(0, snaps.size())
                .mapToObj(i -> new Shot(
                        new PhotoId(i + 1),
                        snaps.get(i).seconds(),
                        i % every == every / 2 ? List.of(snaps.get(i).zone()) : List.of(),
                        Optional.empty()))
                .toList();
    }

    /** Scores suggestions against the truth. */
    public static Yardstick of(List<Snap> snaps, Map<PhotoId, List<Suggestion>> suggested) {
        Reliability reliability = new Reliability();
        for (int i = 0; i < snaps.size(); i++) {
            List<Suggestion> best = suggested.getOrDefault(new PhotoId(i + 1), List.of());
            if (i % PIN_EVERY != PIN_EVERY / 2 && !best.isEmpty()) {
                reliability.add(
                        best.get(0).p(), best.get(0).zone().equals(snaps.get(i).zone()));
            }
        }
        return score(snaps, reliability, i -> suggested.getOrDefault(new PhotoId(i + 1), List.of()).stream()
                .map(Suggestion::zone)
                .toList());
    }

    /** Scores the rule: pinned zones in the order of their nearness in time, the earlier photo first where two are equally near. */
    public static Yardstick ofNearest(List<Snap> snaps) {
        return score(snaps, new Reliability(), i -> {
            Set<ZoneId> order = new LinkedHashSet<>();
            IntStream.range(0, snaps.size())
                    .filter(k -> k % PIN_EVERY == PIN_EVERY / 2)
                    .boxed()
                    .sorted(java.util.Comparator.comparingDouble(
                            k -> Math.abs(snaps.get(k).seconds() - snaps.get(i).seconds())))
                    .forEach(k -> order.add(snaps.get(k).zone()));
            return new ArrayList<>(order);
        });
    }

    private static Yardstick score(List<Snap> snaps, Reliability reliability, Function<Integer, List<ZoneId>> answer) {
        int photos = 0;
        int first = 0;
        int three = 0;
        for (int i = 0; i < snaps.size(); i++) {
            if (i % PIN_EVERY == PIN_EVERY / 2) {
                continue;
            }
            photos++;
            List<ZoneId> zones = answer.apply(i);
            int place = zones.indexOf(snaps.get(i).zone());
            first += place == 0 ? 1 : 0;
            three += place >= 0 && place < 3 ? 1 : 0;
        }
        return new Yardstick(photos, (double) first / photos, (double) three / photos, reliability);
    }

    /** The mean over visits, each photo counting once. */
    public static Yardstick mean(List<Yardstick> all) {
        int photos = all.stream().mapToInt(Yardstick::photos).sum();
        return new Yardstick(
                photos,
                all.stream().mapToDouble(y -> y.first * y.photos).sum() / photos,
                all.stream().mapToDouble(y -> y.firstThree * y.photos).sum() / photos,
                Reliability.together(all.stream().map(Yardstick::reliability).toList()));
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%4.1f %4.1f (off %.1f, %+.1f)",
                100 * first,
                100 * firstThree,
                100 * reliability.error(),
                100 * reliability.tooSure());
    }
}
