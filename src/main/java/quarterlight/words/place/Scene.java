package quarterlight.words.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.PartName;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.text.Clause;
import quarterlight.words.text.WordSet;

/**
 * Where the speaker stands in the walk: the region, the side, the end and the part last spoken of, carried from clause to clause. Changed
 * by {@link #enter}; one scene reads one walk, in order.
 */
public final class Scene {
    private static final Set<String> LOCATORS = WordSet.of(
            "above against ahead around back behind below beneath beside between by for from front like near next off "
                    + "over past round than till toward towards under underneath until with without ");
    private static final Set<String> ON = WordSet.of("about across along at in inside into of on onto through to ");
    private static final Set<String> CAR =
            Set.of("car", "truck", "wagon", "thing", "vehicle", "body", "coupe", "sedan");

    private static final int PAIR_AGE = 8;

    private final CarZones car;
    private String region = "outer";
    private SpokenSide side = SpokenSide.LEFT;
    private End doorEnd = End.FRONT;
    private End areaEnd = End.FRONT;
    private End floorEnd = End.FRONT;
    private boolean sideKnown;
    private SpokenPlace focus = SpokenPlace.NOWHERE;
    /** The place last spoken of that comes in pairs, and how many clauses ago it was named. */
    private SpokenPlace pair = SpokenPlace.NOWHERE;

    private int pairAge;
    private int age;

    public Scene(CarZones car) {
        this.car = car;
    }

    public SpokenPlace focus() {
        return focus;
    }

    /** A new memo begins: the place is not carried over, the side is. */
    public void part() {
        focus = SpokenPlace.NOWHERE;
        pair = SpokenPlace.NOWHERE;
        doorEnd = End.FRONT;
        areaEnd = End.FRONT;
    }

    /** Takes a clause in and returns the place that it speaks of; the second and further parts of a list stand in the zones. */
    public SpokenPlace enter(Clause clause) {
        setRegion(clause);
        List<Mention> parts = parts(clause);
        List<Sides.Said> sides = Sides.in(
                clause,
                car.driver(),
                side,
                focus.known() && focus.sideHow() != PlaceSource.CENTRAL ? focus.side() : side);
        List<Mention> ends = ends(clause, parts);
        SpokenPlace place = named(clause, parts, sides, ends)
                .or(() -> pointed(clause, sides, ends))
                .orElseGet(() -> focus.known() ? focus.carried() : focus);
        if (parts.isEmpty() && (place.how() == PlaceSource.CARRIED || place.how() == PlaceSource.UNKNOWN)) {
            headed(clause, sides, ends);
        }
        remember(place, clause, sides);
        return place;
    }

    private void remember(SpokenPlace place, Clause clause, List<Sides.Said> sides) {
        age = place.how() == PlaceSource.CARRIED ? age + 1 : 0;
        if (place.how() == PlaceSource.UNKNOWN) {
            return;
        }
        focus = place;
        pairAge++;
        if (place.part().sided() && place.how() != PlaceSource.CARRIED) {
            pair = place;
            pairAge = 0;
        }
        if ((place.sideHow() == PlaceSource.NAMED || place.sideHow() == PlaceSource.POINTED)
                && place.side() != SpokenSide.BOTH) {
            side = place.side();
            sideKnown = true;
        } else if (place.sideHow() == PlaceSource.CENTRAL && place.how() == PlaceSource.NAMED) {
            Sides.ofWalk(clause, sides).ifPresent(now -> {
                side = now;
                sideKnown = true;
            });
        }
        if (place.how() == PlaceSource.CARRIED) {
            return;
        }
        String zone = place.zones().isEmpty() ? "" : place.zones().get(0).value();
        if (place.part().ended() && place.end() != End.BOTH) {
            if (zone.startsWith("door")) {
                doorEnd = place.end();
            } else if (zone.startsWith("floor")) {
                floorEnd = place.end();
            }
            areaEnd = place.end();
        } else if (zone.startsWith("fender")
                || zone.startsWith("hood")
                || zone.startsWith("cowl")
                || zone.startsWith("grille")) {
            doorEnd = End.FRONT;
            areaEnd = End.FRONT;
        } else if (zone.startsWith("quarter")
                || zone.startsWith("tail")
                || zone.startsWith("deck")
                || zone.startsWith("trunk")
                || zone.startsWith("bed")) {
            areaEnd = End.REAR;
        }
        if (zone.startsWith("quarter") || zone.startsWith("fender")) {
            doorEnd = End.FRONT;
        }
    }

    /** "Coming down the driver's side now": a side, no part. */
    private void headed(Clause clause, List<Sides.Said> sides, List<Mention> ends) {
        if (sides.size() == 1 && sides.get(0).side() != SpokenSide.BOTH && !clause.has(TermKind.CONDITION)) {
            side = sides.get(0).side();
            sideKnown = true;
        }
        boolean opens = sides.stream().anyMatch(s -> s.from() <= 2);
        Sides.ofWalk(clause, sides).filter(now -> opens).ifPresent(now -> {
            side = now;
            sideKnown = true;
        });
        boolean moved = clause.size() <= 7
                && !clause.has(TermKind.CONDITION)
                && !clause.has(TermKind.SIGN)
                && !clause.has(TermKind.GOOD);
        if (ends.size() == 1 && (clause.has(TermKind.REGION) || moved)) {
            areaEnd = end(ends.get(0));
        }
    }

    private void setRegion(Clause clause) {
        Optional<String> said = Regions.entered(clause, focus.known(), part -> on(part.when()));
        if (said.isPresent()) {
            String now = said.get();
            if (!now.equals(region) && clause.size() <= 10) {
                focus = SpokenPlace.NOWHERE;
            }
            region = now;
        }
    }

    /** The parts named, of equal names the one that is met where the speaker stands. */
    private List<Mention> parts(Clause clause) {
        List<Mention> kept = new ArrayList<>();
        List<Mention> all = clause.all(TermKind.PART)
                .filter(m -> car.has(m.phrase().part()))
                .filter(m -> m.phrase().part().when().isEmpty()
                        || m.phrase().part().when().equals("in-" + region)
                        || on(m.phrase().part().when()))
                .sorted(Comparator.comparingInt(Mention::from))
                .toList();
        for (Mention m : all) {
            int last = kept.size() - 1;
            if (last >= 0 && kept.get(last).from() == m.from()) {
                if (better(m, kept.get(last))) {
                    kept.set(last, m);
                }
            } else if (!Phrasing.inSaying(clause, m)) {
                kept.add(m);
            }
        }
        return kept;
    }

    /** The name means this part only while the speaker is at another: "the bottom edge" of a door. */
    private boolean on(String when) {
        return when.startsWith("on-")
                && focus.known()
                && focus.zones().get(0).value().startsWith(when.substring(3));
    }

    private boolean better(Mention a, Mention b) {
        int rankA = rank(a.phrase().part());
        int rankB = rank(b.phrase().part());
        return rankA > rankB;
    }

    private int rank(PartName part) {
        return (part.region().equals(region) ? 1 : 0) + (part.when().isEmpty() ? 0 : 2);
    }

    private List<Mention> ends(Clause clause, List<Mention> parts) {
        return clause.all(TermKind.END)
                .filter(m -> parts.stream().noneMatch(p -> p.overlaps(m)))
                .filter(m -> clause.all(TermKind.CONDITION).noneMatch(c -> c.overlaps(m) && c.length() > m.length()))
                .toList();
    }

    private static End end(Mention m) {
        return m.value().equals("rear") ? End.REAR : End.FRONT;
    }

    private Optional<SpokenPlace> named(
            Clause clause, List<Mention> parts, List<Sides.Said> sides, List<Mention> ends) {
        Mention subject = null;
        Mention on = null;
        Mention locator = null;
        for (Mention part : parts) {
            String prep = Phrasing.preposition(clause, part);
            if (LOCATORS.contains(prep)
                    || Phrasing.obstacle(clause, part)
                    || Phrasing.compared(clause, part)
                    || Phrasing.counted(clause, part)) {
                locator = locator == null ? part : locator;
            } else if (ON.contains(prep)) {
                on = on == null ? part : on;
            } else if (subject == null) {
                subject = part;
            }
        }
        if (subject == null && on == null && wholeCar(clause)) {
            return Optional.of(new SpokenPlace(
                    PartName.NONE,
                    SpokenSide.BOTH,
                    End.BOTH,
                    List.of(),
                    PlaceSource.NAMED,
                    PlaceSource.CENTRAL,
                    "the whole car"));
        }
        boolean told = locator != null && Phrasing.compared(clause, locator);
        Mention chosen =
                subject != null ? subject : on != null ? on : focus.known() && (age < 6 || told) ? null : locator;
        if (chosen == null) {
            return Optional.empty();
        }
        SpokenPlace place = place(clause, chosen, sides, ends);
        Set<ZoneId> zones = new LinkedHashSet<>(place.zones());
        int end = chosen.to();
        for (Mention next : parts) {
            if (next.from() >= chosen.to()
                    && next.from() - chosen.to() <= 4
                    && Phrasing.joined(clause, chosen.to(), next.from())) {
                zones.addAll(place(clause, next, sides, ends).zones());
                end = next.to();
            }
        }
        if (zones.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SpokenPlace(
                place.part(),
                place.side(),
                place.end(),
                List.copyOf(zones),
                PlaceSource.NAMED,
                place.sideHow(),
                clause.shown(chosen.from(), end)));
    }

    private static boolean wholeCar(Clause clause) {
        for (int i = 0; i + 1 < clause.size(); i++) {
            if (Set.of("whole", "entire").contains(clause.word(i)) && CAR.contains(clause.word(i + 1))) {
                return true;
            }
        }
        return false;
    }

    /** Lets the place be that of a zone, as a function tried has it. */
    public void focus(String name, String zone) {
        PartName part = new PartName(name, List.of(List.of(zone)), region, "");
        if (car.has(part)) {
            focus = new SpokenPlace(
                    part, side, areaEnd, car.of(part, side, areaEnd), PlaceSource.CARRIED, PlaceSource.CENTRAL, name);
        }
    }

    private SpokenPlace place(Clause clause, Mention part, List<Sides.Said> sides, List<Mention> ends) {
        PartName name = part.phrase().part();
        Optional<Sides.Said> near = Phrasing.near(clause, part, sides);
        Optional<End> nearEnd = ends.stream()
                .filter(m -> m.to() <= part.from()
                        ? Phrasing.gapOnly(clause, m.to(), part.from())
                        : m.from() - part.to() <= 2)
                .map(Scene::end)
                .findFirst()
                .or(() -> name.ended() && ends.size() == 1 ? Optional.of(end(ends.get(0))) : Optional.empty());
        End end = nearEnd.orElseGet(
                () -> near.filter(s -> Phrasing.occupant(clause, s)).isPresent() && Phrasing.besideSeat(name)
                        ? End.FRONT
                        : usualEnd(name));
        if (!name.sided()) {
            return new SpokenPlace(
                    name, side, end, car.of(name, SpokenSide.BOTH, end), PlaceSource.NAMED, PlaceSource.CENTRAL, "");
        }
        if (near.isPresent()) {
            Sides.Said said = near.get();
            return new SpokenPlace(
                    name,
                    said.side(),
                    end,
                    car.of(name, said.side(), end),
                    PlaceSource.NAMED,
                    said.pointed() ? PlaceSource.POINTED : PlaceSource.NAMED,
                    "");
        }
        if (Phrasing.plural(clause, part)
                || name.zones().get(0).get(0).startsWith("seat-front") && !car.hasRearSeat()) {
            boolean wheels = nearEnd.isEmpty()
                    && (name.zones().get(0).get(0).startsWith("wheel-{")
                            || name.zones().get(0).get(0).startsWith("torque-box-{"));
            End ends4 = wheels ? End.BOTH : end;
            return new SpokenPlace(
                    name,
                    SpokenSide.BOTH,
                    ends4,
                    car.of(name, SpokenSide.BOTH, ends4),
                    PlaceSource.NAMED,
                    PlaceSource.PLURAL,
                    "");
        }
        return new SpokenPlace(
                name,
                side,
                end,
                car.of(name, side, end),
                PlaceSource.NAMED,
                sideKnown ? PlaceSource.CARRIED : PlaceSource.UNKNOWN,
                "");
    }

    private End usualEnd(PartName name) {
        String pattern = name.zones().isEmpty() ? "" : name.zones().get(0).get(0);
        if (pattern.startsWith("door")) {
            return doorEnd;
        }
        if (pattern.startsWith("floor")) {
            return floorEnd;
        }
        return areaEnd;
    }

    /** "the right one", "driver's": the part spoken of before, on another side or at another end. */
    private Optional<SpokenPlace> pointed(Clause clause, List<Sides.Said> sides, List<Mention> ends) {
        if (!focus.known() || clause.has(TermKind.REGION) && clause.size() <= 8) {
            return Optional.empty();
        }
        boolean paired =
                !focus.part().sided() && pair.known() && pairAge <= PAIR_AGE && Phrasing.oneOfTwo(clause, sides);
        SpokenPlace of = paired ? pair : focus;
        PartName part = Twins.oneOfEach(of.part());
        Optional<End> end = ends.isEmpty() || paired ? Optional.empty() : Optional.of(end(ends.get(0)));
        if (end.isPresent() && !part.ended()) {
            Optional<SpokenPlace> swapped = sides.isEmpty()
                    ? Twins.otherEnd(focus, end.get(), Phrasing.several(clause), car)
                    : Optional.empty();
            if (swapped.isPresent()) {
                return swapped;
            }
            end = Optional.empty();
        }
        boolean sideMeant = part.sided() && !sides.isEmpty();
        if (!sideMeant && end.isEmpty()) {
            return Optional.empty();
        }
        List<Sides.Said> meant = Sides.explicit(sides);
        Set<SpokenSide> said = new LinkedHashSet<>();
        meant.forEach(s -> said.add(s.side()));
        boolean several = end.isPresent() && part.sided() && Phrasing.several(clause);
        SpokenSide now = !sideMeant
                ? several ? SpokenSide.BOTH : focus.side()
                : said.size() > 1 ? SpokenSide.BOTH : meant.get(0).side();
        End last = end.orElse(of.end());
        List<ZoneId> zones = car.of(part, now, last);
        if (zones.isEmpty()) {
            return Optional.empty();
        }
        PlaceSource how =
                sideMeant ? sides.get(0).pointed() ? PlaceSource.POINTED : PlaceSource.NAMED : focus.sideHow();
        return Optional.of(new SpokenPlace(part, now, last, zones, PlaceSource.POINTED, how, of.said()));
    }
}
