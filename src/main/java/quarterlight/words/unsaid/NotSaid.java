package quarterlight.words.unsaid;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.words.Draft;
import quarterlight.words.Utterance;
import quarterlight.words.clause.Heard;
import quarterlight.words.clause.Moment;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.PlaceSource;

/**
 * Finds what a walk leaves unsaid. A zone was spoken of if a clause names it and talks of this car, or if a draft that is more likely right than wrong
 * is about it; where the side is not known, both sides count as spoken of. Judgment, without a source. Pure.
 */
public final class NotSaid {
    /** From here on a draft is taken as said. */
    private static final double LIKELY = 0.5;

    private static final Set<TermKind> OF_ANOTHER = Set.of(TermKind.GENERAL, TermKind.OTHER, TermKind.PROMISE);

    private final Heard walk;
    private final List<Zone> car;
    private final Map<ZoneId, ZoneId> mirrors = new LinkedHashMap<>();
    private final Set<ZoneId> spoken = new HashSet<>();

    private NotSaid(Heard walk, List<Zone> car) {
        this.walk = walk;
        this.car = car;
        Set<ZoneId> there = car.stream().map(Zone::id).collect(Collectors.toSet());
        car.forEach(zone -> zone.mirror().filter(there::contains).ifPresent(mirror -> mirrors.put(zone.id(), mirror)));
        gather();
    }

    /**
     * What the words leave out, promises first, then sides, both in the order of the walk, then groups of zones in that of the zone table.
     *
     * @param car the zones of the car
     * @return nothing where no word was heard
     */
    public static List<Unsaid> of(Heard walk, List<Zone> car) {
        if (walk.moments().isEmpty()) {
            return List.of();
        }
        NotSaid unsaid = new NotSaid(walk, car);
        List<Unsaid> found = new ArrayList<>(new Promises(walk).withoutSequel());
        List<Unsaid> sides = unsaid.otherSides();
        found.addAll(sides);
        Set<ZoneId> told = sides.stream().flatMap(one -> one.zones().stream()).collect(Collectors.toSet());
        found.addAll(unsaid.never(told));
        return List.copyOf(found);
    }

    private void gather() {
        for (Moment moment : walk.moments()) {
            if (Promises.isNamed(moment) && OF_ANOTHER.stream().noneMatch(moment::has)) {
                speak(moment.place().zones(), moment.place().sideHow() == PlaceSource.UNKNOWN);
            }
        }
        walk.drafts().stream()
                .filter(NotSaid::isLikely)
                .forEach(draft -> speak(draft.zones(), draft.features().contains("side-unknown")));
    }

    private void speak(List<ZoneId> zones, boolean eitherSide) {
        spoken.addAll(zones);
        if (eitherSide) {
            zones.stream()
                    .map(zone -> Optional.ofNullable(mirrors.get(zone)))
                    .flatMap(Optional::stream)
                    .forEach(spoken::add);
        }
    }

    private static boolean isLikely(Draft draft) {
        return draft.p() >= LIKELY && !draft.withdrawn();
    }

    /** Zones of which the speaker says something while the same place on the other side is never spoken of; those of one clause together. */
    private List<Unsaid> otherSides() {
        Map<ZoneId, Draft> last = new LinkedHashMap<>();
        walk.drafts().stream()
                .filter(draft -> isLikely(draft) && Promises.isOwn(draft))
                .forEach(draft -> draft.zones().stream()
                        .map(zone -> Optional.ofNullable(mirrors.get(zone)))
                        .flatMap(Optional::stream)
                        .filter(mirror -> !spoken.contains(mirror))
                        .forEach(mirror -> last.put(mirror, draft)));
        Map<Draft, List<ZoneId>> together = new HashMap<>();
        last.forEach((zone, draft) ->
                together.computeIfAbsent(draft, d -> new ArrayList<>()).add(zone));
        return walk.drafts().stream()
                .filter(together::containsKey)
                .map(draft -> new Unsaid(
                        Unsaid.Kind.OTHER_SIDE,
                        together.get(draft),
                        Optional.empty(),
                        false,
                        Optional.of(Utterance.of(draft))))
                .toList();
    }

    private List<Unsaid> never(Set<ZoneId> told) {
        Map<ZoneGroup, List<ZoneId>> left = new EnumMap<>(ZoneGroup.class);
        Set<ZoneGroup> touched = new HashSet<>();
        for (Zone zone : car) {
            if (spoken.contains(zone.id()) || told.contains(zone.id())) {
                touched.add(zone.group());
            } else {
                left.computeIfAbsent(zone.group(), group -> new ArrayList<>()).add(zone.id());
            }
        }
        return left.entrySet().stream()
                .map(entry -> new Unsaid(
                        Unsaid.Kind.NEVER_SPOKEN_OF,
                        entry.getValue(),
                        Optional.of(entry.getKey()),
                        !touched.contains(entry.getKey()),
                        Optional.empty()))
                .toList();
    }
}
