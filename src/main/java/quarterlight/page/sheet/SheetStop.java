package quarterlight.page.sheet;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.ZoneGroup;
import quarterlight.car.body.DriveSide;
import quarterlight.coverage.EvidenceKind;
import quarterlight.coverage.Gap;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.visit.pin.ViewPoint;

/**
 * A part of the car at which the inspector stops on the walk, and what is still asked for there.
 *
 * @param photos pictures that are lacking
 * @param panels outer panels that lack spots
 * @param spots spots that are lacking
 * @param rust zones in which rust is to be looked for, sides together
 * @param more other evidence, in words
 */
public record SheetStop(String name, int photos, int panels, int spots, List<RustLook> rust, List<String> more) {
    /**
     * A zone to look at for rust.
     *
     * @param sides one tick for the zone itself, or one for each side
     */
    public record RustLook(String name, List<String> sides) {
        public RustLook {
            sides = List.copyOf(sides);
        }
    }

    /** Parts of the car in words. */
    private enum Part {
        WHOLE_CAR("sheet.sheet-stop.whole-car"),
        FRONT("sheet.sheet-stop.front"),
        LEFT("sheet.sheet-stop.left-side"),
        REAR("sheet.sheet-stop.rear"),
        RIGHT("sheet.sheet-stop.right-side"),
        TOP("sheet.sheet-stop.roof-and-top"),
        BAY("sheet.sheet-stop.engine-bay"),
        OPENINGS("sheet.sheet-stop.door-openings"),
        CABIN("sheet.sheet-stop.cabin"),
        LOAD("sheet.sheet-stop.trunk-or-bed"),
        UNDER("sheet.sheet-stop.under-the-car"),
        PAPERS("sheet.sheet-stop.papers-plates");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        boolean outside() {
            return ordinal() <= TOP.ordinal();
        }
    }

    public SheetStop {
        rust = List.copyOf(rust);
        more = List.copyOf(more);
    }

    /**
     * The stops at which something is lacking.
     *
     * @param walk in the order of the walk
     */
    static List<SheetStop> of(List<ZoneCoverage> walk, BodyDiagram diagram, ZonePlaces places) {
        Map<Part, List<ZoneCoverage>> parts = new LinkedHashMap<>();
        Part here = Part.WHOLE_CAR;
        for (ZoneCoverage zone : walk) {
            here = part(zone.zone(), here, diagram, places);
            parts.computeIfAbsent(here, fresh -> new ArrayList<>()).add(zone);
        }
        List<SheetStop> stops = new ArrayList<>();
        parts.forEach((part, zones) -> {
            List<Gap> gaps =
                    zones.stream().flatMap(zone -> zone.gaps().stream()).toList();
            if (!gaps.isEmpty()) {
                stops.add(stop(part, gaps));
            }
        });
        return List.copyOf(stops);
    }

    /** Where a zone is met, on the way from the part before. */
    private static Part part(Zone zone, Part before, BodyDiagram diagram, ZonePlaces places) {
        return switch (zone.group()) {
            case RECORD -> zone.id().value().equals("identity-papers") ? Part.PAPERS : Part.WHOLE_CAR;
            case BAY -> Part.BAY;
            case CABIN -> Part.CABIN;
            case LOAD -> Part.LOAD;
            case UNDER -> Part.UNDER;
            default -> {
                if (zone.group() == ZoneGroup.EDGES && !before.outside()) {
                    yield before == Part.BAY || before == Part.OPENINGS
                            ? Part.OPENINGS
                            : before == Part.CABIN ? Part.LOAD : before;
                }
                yield outside(zone, places.pointFor(diagram, zone.id()).map(ViewPoint::view), before);
            }
        };
    }

    /**
     * A zone of one side is met there, save a lamp at an end; one seen best from above at the end where one stands. Who has come to the roof
     * stays there.
     */
    private static Part outside(Zone zone, Optional<View> view, Part before) {
        if (view.isEmpty() || before == Part.TOP) {
            return before;
        }
        boolean atSide = before == Part.LEFT || before == Part.RIGHT;
        boolean lamp = zone.group() == ZoneGroup.TRIM && (view.get() == View.FRONT || view.get() == View.REAR);
        if (zone.side().isPresent() && (atSide || !lamp)) {
            return zone.side().get() == DriveSide.LEFT ? Part.LEFT : Part.RIGHT;
        }
        return switch (view.get()) {
            case FRONT -> Part.FRONT;
            case REAR -> Part.REAR;
            case TOP -> before == Part.WHOLE_CAR ? Part.FRONT : atSide ? Part.TOP : before;
            default -> before;
        };
    }

    private static SheetStop stop(Part part, List<Gap> gaps) {
        Map<EvidenceKind, Integer> lacking = new EnumMap<>(EvidenceKind.class);
        Set<Zone> panels = new LinkedHashSet<>();
        Map<String, List<String>> rust = new LinkedHashMap<>();
        Set<String> more = new LinkedHashSet<>();
        for (Gap gap : gaps) {
            lacking.merge(gap.lacks(), gap.want() - gap.have(), Integer::sum);
            switch (gap.lacks()) {
                case SPOTS -> panels.add(gap.zone());
                case RUST -> {
                    boolean sided = gap.zone().side().isPresent() && part != Part.LEFT && part != Part.RIGHT;
                    String name = SheetViews.withoutSide(gap.zone().label());
                    rust.computeIfAbsent(name, fresh -> new ArrayList<>())
                            .add(sided ? initial(gap.zone().side().get()) : "");
                }
                case IDENTITY_MARK -> more.add(say("sheet.sheet-stop.a-vehicle-number-or-plate"));
                case MARK_VIEWS ->
                    more.add(say(
                            "sheet.sheet-stop.two-views-of", gap.part().orElse(say("sheet.sheet-stop.each-number"))));
                default -> {}
            }
        }
        return new SheetStop(
                say(part.words),
                lacking.getOrDefault(EvidenceKind.PHOTO, 0),
                panels.size(),
                lacking.getOrDefault(EvidenceKind.SPOTS, 0),
                rust.entrySet().stream()
                        .map(look -> new RustLook(look.getKey(), look.getValue()))
                        .toList(),
                List.copyOf(more));
    }

    private static String initial(DriveSide side) {
        return side == DriveSide.LEFT ? "L" : "R";
    }
}
