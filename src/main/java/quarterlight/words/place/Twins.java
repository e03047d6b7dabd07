package quarterlight.words.place;

import java.util.List;
import java.util.Optional;
import quarterlight.words.lexicon.PartName;

/** Parts that have a twin at the other end or on the other side of the car. Pure. */
final class Twins {
    private Twins() {}

    /** "the front bumper ... the rear one": what has a twin at the other end of the car. */
    static Optional<SpokenPlace> otherEnd(SpokenPlace focus, End end, boolean several, CarZones car) {
        String from = end == End.REAR ? "front" : "rear";
        String to = end == End.REAR ? "rear" : "front";
        boolean both = several && focus.part().sided();
        List<List<String>> zones = both
                ? focus.part().zones().stream()
                        .map(together -> together.stream()
                                .map(zone -> zone.replace(from, to))
                                .toList())
                        .toList()
                : focus.zones().stream()
                        .map(zone -> zone.value().replace(from, to))
                        .map(List::of)
                        .toList();
        SpokenSide side = both ? SpokenSide.BOTH : focus.side();
        PartName part = new PartName(
                focus.part().name().replace(from, to), zones, focus.part().region(), "");
        boolean moved = (both || focus.zones().size() == 1)
                && focus.zones().stream().allMatch(zone -> zone.value().contains(from))
                && car.has(part);
        return moved
                ? Optional.of(new SpokenPlace(
                        part, side, end, car.of(part, side, end), PlaceSource.POINTED, focus.sideHow(), focus.said()))
                : Optional.empty();
    }

    /** Of a name that means the parts of both sides, that of one: "upholstery, the driver's chair ...". */
    static PartName oneOfEach(PartName part) {
        if (part.zones().stream().allMatch(together -> together.stream().noneMatch(z -> z.contains("{b}")))) {
            return part;
        }
        List<List<String>> zones = part.zones().stream()
                .map(together ->
                        together.stream().map(z -> z.replace("{b}", "{s}")).toList())
                .toList();
        return new PartName(part.name(), zones, part.region(), part.when());
    }
}
