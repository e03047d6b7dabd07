package quarterlight.edit.spoken;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.capture.CorrectedTime;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.table.TableUnreadable;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.walk.WalkShots;
import quarterlight.walk.said.PlaceSaid;
import quarterlight.words.clause.Moment;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.PlaceSource;

/** Where the speaker was when, by the words of films and memos whose recorded time is known: evidence for the zones of photos taken around then. */
public final class WalkPlaces {
    /** Names for more zones than these, such as all the glass, say little of where one stands. */
    private static final int MOST_ZONES = 6;

    private static final double MILLIS = 1000;
    /** What is carried on from an earlier clause counts half. Judgment. */
    private static final double CARRIED = 0.5;

    private static final Set<TermKind> ELSEWHERE =
            Set.of(TermKind.GENERAL, TermKind.OTHER, TermKind.HYPO, TermKind.PROMISE, TermKind.CLAIM);

    private WalkPlaces() {}

    /**
     * What was said, read from the files of words of a visit; none where it has no words.
     *
     * @param folder of the visit
     * @param settings the folder in which the user's own lists of words lie, if there are any
     * @throws TableUnreadable if one of the user's own lists cannot be used
     */
    public static List<PlaceSaid> of(VisitRecord visit, Path folder, ZoneCatalog zones, Path settings)
            throws TableUnreadable {
        boolean words = visit.photos().stream().anyMatch(photo -> photo.file().kind() == MediaKind.WORDS);
        return words ? of(visit, VisitWalk.of(visit, folder, zones, settings), zones) : List.of();
    }

    /** The places of a walk that was read, in seconds of the time line of {@link WalkShots}; none if no photo has a time. */
    public static List<PlaceSaid> of(VisitRecord visit, VisitWalk walk, ZoneCatalog zones) {
        Optional<Instant> start = WalkShots.start(visit);
        CorrectedTimes times = CorrectedTimes.of(visit);
        List<PlaceSaid> said = new ArrayList<>();
        for (Moment moment : walk.spoken().heard().moments()) {
            Optional<Instant> began = Optional.ofNullable(
                            walk.parts().get(moment.clause().source()))
                    .flatMap(VisitWalk.Part::about)
                    .flatMap(film -> times.of(film.id()))
                    .map(CorrectedTime::utc)
                    .map(time -> time.toInstant());
            if (start.isPresent() && began.isPresent() && isHere(moment)) {
                double seconds = Duration.between(start.get(), began.get()).toMillis() / MILLIS
                        + moment.clause().at();
                said.add(new PlaceSaid(
                        seconds,
                        meant(moment, visit, zones),
                        moment.place().how() == PlaceSource.CARRIED ? CARRIED : 1));
            }
        }
        return said;
    }

    private static boolean isHere(Moment moment) {
        return moment.place().known()
                && moment.place().zones().size() <= MOST_ZONES
                && !moment.clause().told()
                && ELSEWHERE.stream().noneMatch(moment::has);
    }

    /** Where no side was said, both may be meant. */
    private static List<ZoneId> meant(Moment moment, VisitRecord visit, ZoneCatalog zones) {
        Set<ZoneId> meant = new LinkedHashSet<>(moment.place().zones());
        if (moment.place().sideHow() == PlaceSource.UNKNOWN) {
            zones.zonesOf(visit.facts().car().body()).stream()
                    .filter(zone -> moment.place().zones().contains(zone.id()))
                    .flatMap(zone -> zone.mirror().stream())
                    .forEach(meant::add);
        }
        return List.copyOf(meant);
    }
}
