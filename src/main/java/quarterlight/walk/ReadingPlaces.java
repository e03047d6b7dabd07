package quarterlight.walk;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import quarterlight.capture.CorrectedTime;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneId;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/**
 * Where readings were likely taken, by the pinned photos around them in time; a suggestion that the inspector confirms.
 * <p>Readings that follow each other without a pause and without a photo between them are a run and share a zone. A run belongs to the photo
 * before or the one after, the nearer the likelier; whoever photographs a panel and then measures it does so all along, so what holds for
 * most runs weighs in all. Beyond ten minutes from both nothing is suggested. The numbers are of our own, without a source.
 */
public final class ReadingPlaces {
    /** Within this time a photo's word for a run falls to about a third. */
    private static final double FADE_S = 60;

    private static final Duration FARTHEST = Duration.ofMinutes(10);
    private static final double MIN_PAUSE_S = 20;
    private static final double MAX_PAUSE_S = 60;
    private static final double PAUSE_IN_MEDIANS = 4;
    /** What speaks for a zone that no photo near shows. */
    private static final double ELSEWHERE = 0.1;
    /** What a run with a photo on one side only says of the habit, in standard errors. */
    private static final double AN_END = 2;

    private ReadingPlaces() {}

    /**
     * A likely zone.
     *
     * @param reading which of the readings, from 0
     * @param share how much of what speaks for any zone speaks for this one, 0 to 1
     * @param photo the pinned photo that speaks most for it
     * @param away how far in time that photo is from the run
     */
    public record Place(int reading, ZoneId zone, double share, PhotoId photo, Duration away) {}

    /** A photo, or a moment of a film. */
    private record Moment(PhotoId photo, double seconds) {}

    private record Shown(LocalDateTime time, PhotoId photo, Set<ZoneId> zones) {}

    private record Run(List<Integer> readings, LocalDateTime from, LocalDateTime to) {}

    private record Near(Optional<Shown> before, Optional<Shown> after, Run run) {
        double gapBefore() {
            return before.map(photo -> seconds(photo.time(), run.from())).orElse(Double.POSITIVE_INFINITY);
        }

        double gapAfter() {
            return after.map(photo -> seconds(run.to(), photo.time())).orElse(Double.POSITIVE_INFINITY);
        }
    }

    /**
     * The places of those readings for which there is a suggestion, in the order given.
     *
     * @param readings local times at the visit
     * @param readable the zones that a gauge is held to; pins to others say nothing
     */
    public static List<Place> of(
            VisitRecord visit, CorrectedTimes times, List<LocalDateTime> readings, Set<ZoneId> readable) {
        List<Shown> photos = photos(visit, times, Objects.requireNonNull(readable, "readable"));
        List<Near> near = runs(readings, photos).stream()
                .map(run -> new Near(before(photos, run.from()), after(photos, run.to()), run))
                .toList();
        double habit = habitOfPhotoFirst(near);
        List<Place> places = new ArrayList<>();
        near.forEach(one -> place(one, habit, places));
        places.sort(Comparator.comparingInt(Place::reading));
        return List.copyOf(places);
    }

    private static List<Shown> photos(VisitRecord visit, CorrectedTimes times, Set<ZoneId> readable) {
        Map<Moment, Set<ZoneId>> zones = visit.pins().stream()
                .map(Recorded::value)
                .filter(pin -> readable.contains(pin.zone()))
                .collect(Collectors.groupingBy(
                        pin -> new Moment(pin.photo(), pin.at().orElse(0)),
                        LinkedHashMap::new,
                        Collectors.mapping(Pin::zone, Collectors.toSet())));
        List<Shown> photos = new ArrayList<>();
        zones.forEach((moment, shown) -> times.of(moment.photo())
                .map(CorrectedTime::local)
                .ifPresent(time -> photos.add(new Shown(
                        time.toLocalDateTime().plusNanos(Math.round(moment.seconds() * 1e9)), moment.photo(), shown))));
        photos.sort(Comparator.comparing(Shown::time));
        return photos;
    }

    private static List<Run> runs(List<LocalDateTime> readings, List<Shown> photos) {
        List<Integer> order = IntStream.range(0, readings.size())
                .boxed()
                .sorted(Comparator.comparing(readings::get))
                .toList();
        double pause = pause(order.stream().map(readings::get).toList());
        List<Run> runs = new ArrayList<>();
        List<Integer> run = new ArrayList<>();
        for (Integer next : order) {
            if (!run.isEmpty()) {
                LocalDateTime last = readings.get(run.get(run.size() - 1));
                LocalDateTime now = readings.get(next);
                boolean photoBetween = photos.stream()
                        .anyMatch(photo ->
                                photo.time().isAfter(last) && !photo.time().isAfter(now));
                if (photoBetween || seconds(last, now) > pause) {
                    runs.add(run(run, readings));
                    run = new ArrayList<>();
                }
            }
            run.add(next);
        }
        if (!run.isEmpty()) {
            runs.add(run(run, readings));
        }
        return runs;
    }

    private static Run run(List<Integer> run, List<LocalDateTime> readings) {
        return new Run(List.copyOf(run), readings.get(run.get(0)), readings.get(run.get(run.size() - 1)));
    }

    /** What counts as a pause at the pace of these readings, seconds. */
    private static double pause(List<LocalDateTime> sorted) {
        double[] gaps = IntStream.range(1, sorted.size())
                .mapToDouble(i -> seconds(sorted.get(i - 1), sorted.get(i)))
                .sorted()
                .toArray();
        double median = gaps.length == 0 ? 0 : gaps[gaps.length / 2];
        return Math.min(MAX_PAUSE_S, Math.max(MIN_PAUSE_S, PAUSE_IN_MEDIANS * median));
    }

    private static Optional<Shown> before(List<Shown> photos, LocalDateTime time) {
        return photos.stream()
                .filter(photo -> !photo.time().isAfter(time))
                .reduce((a, b) -> b)
                .filter(photo -> Duration.between(photo.time(), time).compareTo(FARTHEST) <= 0);
    }

    private static Optional<Shown> after(List<Shown> photos, LocalDateTime time) {
        return photos.stream()
                .filter(photo -> photo.time().isAfter(time))
                .findFirst()
                .filter(photo -> Duration.between(time, photo.time()).compareTo(FARTHEST) <= 0);
    }

    /**
     * How much the photo before speaks, against the one after, 0 to 1: by how much nearer it is over all runs, in standard errors, and by runs at the
     * ends that have a photo on one side only.
     */
    private static double habitOfPhotoFirst(List<Near> near) {
        double[] nearer = near.stream()
                .filter(one -> one.before().isPresent() && one.after().isPresent())
                .mapToDouble(one -> one.gapAfter() - one.gapBefore())
                .toArray();
        double mean = Arrays.stream(nearer).average().orElse(0);
        double squares =
                Arrays.stream(nearer).map(gap -> (gap - mean) * (gap - mean)).sum();
        double error =
                nearer.length < 2 ? FADE_S : Math.max(1, Math.sqrt(squares / (nearer.length - 1.0) / nearer.length));
        long onlyBefore = near.stream().filter(one -> one.after().isEmpty()).count();
        long onlyAfter = near.stream().filter(one -> one.before().isEmpty()).count();
        return 1 / (1 + Math.exp(-mean / error - AN_END * (onlyBefore - onlyAfter)));
    }

    private static void place(Near near, double habit, List<Place> places) {
        double before = habit * Math.exp(-near.gapBefore() / FADE_S);
        double after = (1 - habit) * Math.exp(-near.gapAfter() / FADE_S);
        Map<ZoneId, Double> said = new LinkedHashMap<>();
        near.before().ifPresent(photo -> say(said, photo, before));
        near.after().ifPresent(photo -> say(said, photo, after));
        Optional<Map.Entry<ZoneId, Double>> best = said.entrySet().stream().max(Map.Entry.comparingByValue());
        if (best.isEmpty()) {
            return;
        }
        double all = said.values().stream().mapToDouble(Double::doubleValue).sum();
        double share = best.get().getValue() / (all + ELSEWHERE * (1 - Math.min(1, all)));
        boolean byBefore = near.before()
                        .filter(photo -> photo.zones().contains(best.get().getKey()))
                        .isPresent()
                && (before >= after
                        || near.after()
                                .filter(photo ->
                                        photo.zones().contains(best.get().getKey()))
                                .isEmpty());
        Shown photo = byBefore ? near.before().orElseThrow() : near.after().orElseThrow();
        double away = byBefore ? near.gapBefore() : near.gapAfter();
        for (int reading : near.run().readings()) {
            places.add(new Place(
                    reading, best.get().getKey(), share, photo.photo(), Duration.ofMillis(Math.round(away * 1000))));
        }
    }

    private static void say(Map<ZoneId, Double> said, Shown photo, double weight) {
        photo.zones().forEach(zone -> said.merge(zone, weight / photo.zones().size(), Double::sum));
    }

    private static double seconds(LocalDateTime from, LocalDateTime to) {
        return Duration.between(from, to).toMillis() / 1000.0;
    }
}
