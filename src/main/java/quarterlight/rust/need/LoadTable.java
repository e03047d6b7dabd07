package quarterlight.rust.need;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.body.Construction;

/**
 * Which zone carries load in which construction, with one line of reason each: the one home of this table, of which
 * {@code docs/methods/rust.md} shows a copy that a test compares. Common practice without a published source, after how
 * the constructions carry: a unibody (or a body with a subframe) is a box whose sheet metal carries; on a frame the body
 * rides on the frame and carries itself and the people in it.
 */
public final class LoadTable {
    /**
     * One row.
     *
     * @param families ids of zones without their side, {@code frame-rail-front}
     * @param unibody in a unibody and a body with a subframe
     * @param onFrame in a body on a frame
     */
    public record Row(List<String> families, Load unibody, Load onFrame, String why) {
        public Row {
            families = List.copyOf(families);
        }

        Load in(Construction construction) {
            return construction == Construction.BODY_ON_FRAME ? onFrame : unibody;
        }
    }

    private static final List<Row> ROWS = List.of(
            row(
                    "frame-rail-front frame-rail-rear torque-box-front torque-box-rear",
                    Load.MAIN,
                    Load.MAIN,
                    "the rails and boxes into which engine, axles and sills pass their load"),
            row(
                    "subframe-front frame-side-rail body-mounts crossmember-front crossmember-middle crossmember-rear",
                    Load.MAIN,
                    Load.MAIN,
                    "the frame itself and what ties it together"),
            row(
                    "suspension-tower front-suspension rear-suspension rear-axle steering-linkage",
                    Load.MAIN,
                    Load.MAIN,
                    "wheels hang on it; when it lets go the car cannot be steered"),
            row(
                    "inner-rocker rocker",
                    Load.MAIN,
                    Load.SHELL,
                    "the sill is the longest beam of a unibody; on a frame it only stiffens the cab"),
            row(
                    "a-pillar b-pillar windshield-frame",
                    Load.MAIN,
                    Load.SHELL,
                    "holds the roof and the belts; on a frame it guards the people, the frame carries the car"),
            row("wood-body-frame", Load.MAIN, Load.MAIN, "the wood is the frame of the body"),
            row(
                    "floor-front floor-rear toe-board tunnel firewall",
                    Load.SHELL,
                    Load.SHELL,
                    "seats, belts, pedals and steering are bolted to it, on a frame too"),
            row(
                    "inner-fender radiator-support wheelhouse-rear",
                    Load.SHELL,
                    Load.SKIN,
                    "ties rails and towers of a unibody; on a frame it keeps out dirt"),
            row(
                    "cowl cowl-vent roof sail-panel tail-panel top-well",
                    Load.SHELL,
                    Load.SKIN,
                    "closes the box of a unibody; on a frame it is a skin"),
            row(
                    "door-jamb-front door-jamb-rear cab-corner cab-back",
                    Load.SHELL,
                    Load.SHELL,
                    "holds hinges, locks and the mounts of a cab"),
            row("quarter", Load.SHELL, Load.SKIN, "welded skin that stiffens a unibody; on a frame it is a skin"),
            row(
                    "trunk-floor front-luggage-floor trunk-drop spare-well cargo-floor",
                    Load.SHELL,
                    Load.SKIN,
                    "floor of the luggage: part of the box of a unibody, away from what carries the wheels"),
            row(
                    "fuel-tank fuel-brake-lines",
                    Load.FLUID,
                    Load.FLUID,
                    "holds fuel or brake fluid; a thinned wall is exchanged, not patched"));

    private static final Map<String, Row> BY_FAMILY = ROWS.stream()
            .flatMap(row -> row.families().stream().map(family -> Map.entry(family, row)))
            .collect(Collectors.toMap(
                    Map.Entry::getKey, Map.Entry::getValue, (first, second) -> first, LinkedHashMap::new));

    private LoadTable() {}

    private static Row row(String families, Load unibody, Load onFrame, String why) {
        return new Row(Stream.of(families.split(" ")).toList(), unibody, onFrame, why);
    }

    /** The rows, in the order of the docs. A zone in none of them is a fitting or a skin by its group. */
    public static List<Row> rows() {
        return ROWS;
    }

    /** What a zone does in a car of this construction. */
    public static Load of(Zone zone, Construction construction) {
        Row row = BY_FAMILY.get(family(zone));
        if (row != null) {
            return row.in(construction);
        }
        return painted(zone) ? Load.SKIN : Load.FITTING;
    }

    /** True for a zone of painted sheet metal or painted parts: old paint may be sanded there. */
    private static boolean painted(Zone zone) {
        return switch (zone.group()) {
            case OUTER, EDGES, BAY, UNDER -> true;
            case LOAD -> !zone.id().value().equals("jack-tools");
            case COVERING, TRIM, GLASS, WHEELS, CABIN, RECORD -> false;
        };
    }

    /** The zone's id without its side. */
    static String family(Zone zone) {
        return zone.id().value().replaceFirst("-(left|right)$", "");
    }
}
