package quarterlight.diagram.file;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.EnginePlace;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.DiagramShape;
import quarterlight.diagram.Neighbors;
import quarterlight.diagram.ShapeKind;
import quarterlight.diagram.ShapeOutline;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.file.DiagramFinding.Kind;

/** Whether a diagram file is complete and sound enough to work with; the program's own and a user's are held to the same. */
public final class DiagramCheck {
    /** Most that two outer finish zones of an exterior view may overlap, share of the smaller. */
    static final double MAX_OVERLAP = 0.005;
    /** Least that zones, glass and wheels must cover of the silhouette of an exterior view, share. */
    static final double MIN_COVER = 0.97;
    /** Views that show the body from outside. */
    static final Set<View> EXTERIOR = Set.of(View.LEFT, View.RIGHT, View.FRONT, View.REAR, View.TOP);

    private static final double MIN_AREA_MM2 = 1;
    private static final double SLACK_MM = 1;

    private final DiagramFile file;
    private final ZoneCatalog catalog;
    private final List<DiagramFinding> findings = new ArrayList<>();
    private final Set<String> said = new HashSet<>();

    private DiagramCheck(DiagramFile file, ZoneCatalog catalog) {
        this.file = file;
        this.catalog = catalog;
    }

    /** Everything found, in the order of views and zones; empty if the file may be used. */
    public static List<DiagramFinding> check(DiagramFile file, ZoneCatalog catalog) {
        DiagramCheck check = new DiagramCheck(file, catalog);
        check.run();
        return List.copyOf(check.findings);
    }

    /** The bodies a diagram of a style must serve: every construction with every engine place. */
    public static List<Body> variants(BodyStyle style) {
        List<Body> bodies = new ArrayList<>();
        for (Construction construction : Construction.values()) {
            for (EnginePlace engine : EnginePlace.values()) {
                bodies.add(new Body(style, construction, engine));
            }
        }
        return bodies;
    }

    private void run() {
        for (View view : View.values()) {
            if (file.views().stream().noneMatch(drawing -> drawing.view() == view)) {
                say(Kind.VIEW_MISSING, Optional.of(view), Optional.empty(), "the " + view.word() + " view is missing");
            }
        }
        for (ViewDrawing view : file.views()) {
            checkShapes(view);
        }
        checkMissingZones();
        for (Body body : variants(file.style())) {
            BodyDiagram diagram = file.of(body);
            diagram.views().stream()
                    .filter(view -> EXTERIOR.contains(view.view()))
                    .forEach(this::checkSkin);
            checkConnected(diagram);
        }
    }

    private void checkShapes(ViewDrawing view) {
        Set<String> ids = new HashSet<>();
        Rectangle2D frame = new Rectangle2D.Double(
                -SLACK_MM, -SLACK_MM, view.widthMm() + 2 * SLACK_MM, view.heightMm() + 2 * SLACK_MM);
        for (DiagramShape shape : view.zones()) {
            ZoneId zone = shape.zone().orElseThrow();
            String where = "zone " + zone + " in the " + view.view().word() + " view (line " + shape.line() + ")";
            if (catalog.find(zone).isEmpty()) {
                sayShape(Kind.ZONE_UNKNOWN, view, zone, where + " is not in the zone table");
            }
            String id = view.view().word() + "-" + zone;
            if (!shape.id().equals(id) && !shape.id().startsWith(id + "-") || !ids.add(shape.id())) {
                sayShape(Kind.BAD_ID, view, zone, where + " needs an id of its own that begins with " + id);
            }
            if (!shape.outline().closed()) {
                sayShape(Kind.NOT_CLOSED, view, zone, where + " is not a closed outline");
            } else if (shape.outline().area() < MIN_AREA_MM2) {
                sayShape(Kind.NO_AREA, view, zone, where + " has no area");
            } else if (!shape.outline().polygon().isValid()) {
                sayShape(Kind.CROSSES_ITSELF, view, zone, where + " has an outline that crosses itself");
            }
            if (!frame.contains(shape.outline().bounds())) {
                sayShape(Kind.OUTSIDE_VIEW, view, zone, where + " leaves the frame of the view");
            }
        }
    }

    private void checkMissingZones() {
        Map<ZoneId, List<Body>> missing = new LinkedHashMap<>();
        List<Body> variants = variants(file.style());
        for (Body body : variants) {
            Set<ZoneId> drawn = file.of(body).zones();
            for (Zone zone : catalog.zonesOf(body)) {
                if (zone.group() != ZoneGroup.RECORD && !drawn.contains(zone.id())) {
                    missing.computeIfAbsent(zone.id(), id -> new ArrayList<>()).add(body);
                }
            }
        }
        missing.forEach((zone, bodies) -> {
            String which = bodies.size() == variants.size()
                    ? ""
                    : " for "
                            + bodies.stream()
                                    .map(body -> body.construction().word() + " with the engine at the "
                                            + body.engine().word())
                                    .collect(Collectors.joining(", "));
            say(
                    Kind.ZONE_MISSING,
                    Optional.empty(),
                    Optional.of(zone),
                    "zone " + zone + " is drawn in no view" + which);
        });
    }

    private void checkSkin(ViewDrawing view) {
        List<DiagramShape> finish = view.zones().stream()
                .filter(shape -> isOuterFinish(shape.zone().orElseThrow()))
                .toList();
        List<Geometry> areas =
                finish.stream().map(shape -> sound(shape.outline())).toList();
        for (int i = 0; i < finish.size(); i++) {
            for (int j = i + 1; j < finish.size(); j++) {
                checkOverlap(view, finish.get(i), areas.get(i), finish.get(j), areas.get(j));
            }
        }
        checkCover(view);
    }

    private void checkOverlap(ViewDrawing view, DiagramShape a, Geometry areaA, DiagramShape b, Geometry areaB) {
        if (a.zone().equals(b.zone()) || !areaA.getEnvelopeInternal().intersects(areaB.getEnvelopeInternal())) {
            return;
        }
        double smaller = Math.min(areaA.getArea(), areaB.getArea());
        double share = smaller > 0 ? areaA.intersection(areaB).getArea() / smaller : 0;
        if (share >= MAX_OVERLAP) {
            sayShape(
                    Kind.OVERLAP,
                    view,
                    a.zone().orElseThrow(),
                    String.format(
                            Locale.ROOT,
                            "zones %s and %s overlap by %.1f %% of the smaller in the %s view",
                            a.zone().orElseThrow(),
                            b.zone().orElseThrow(),
                            share * 100,
                            view.view().word()));
        }
    }

    private void checkCover(ViewDrawing view) {
        List<Geometry> outline = view.shapes().stream()
                .filter(shape -> shape.kind() == ShapeKind.SILHOUETTE)
                .map(shape -> sound(shape.outline()))
                .toList();
        Geometry silhouette = outline.isEmpty() ? null : UnaryUnionOp.union(outline);
        if (silhouette == null || silhouette.getArea() < MIN_AREA_MM2) {
            say(
                    Kind.UNCOVERED,
                    Optional.of(view.view()),
                    Optional.empty(),
                    "the " + view.view().word() + " view has no silhouette");
            return;
        }
        List<Geometry> skin = view.shapes().stream()
                .filter(shape -> shape.kind() == ShapeKind.ZONE
                        || shape.kind() == ShapeKind.GLASS
                        || shape.kind() == ShapeKind.WHEEL
                        || shape.kind() == ShapeKind.SHADE)
                .map(shape -> sound(shape.outline()))
                .toList();
        double covered = skin.isEmpty()
                ? 0
                : UnaryUnionOp.union(skin).intersection(silhouette).getArea();
        double share = covered / silhouette.getArea();
        if (share < MIN_COVER) {
            say(
                    Kind.UNCOVERED,
                    Optional.of(view.view()),
                    Optional.empty(),
                    String.format(
                            Locale.ROOT,
                            "zones, glass and wheels cover %.1f %% of the silhouette of the %s view, less than %.0f %%",
                            share * 100,
                            view.view().word(),
                            MIN_COVER * 100));
        }
    }

    private void checkConnected(BodyDiagram diagram) {
        List<Set<ZoneId>> islands = Neighbors.of(diagram).islands();
        for (Set<ZoneId> island : islands.subList(Math.min(1, islands.size()), islands.size())) {
            ZoneId first = island.iterator().next();
            say(
                    Kind.NOT_CONNECTED,
                    Optional.empty(),
                    Optional.of(first),
                    "zone " + first + (island.size() > 1 ? " (and " + (island.size() - 1) + " with it)" : "")
                            + " touches no other zone");
        }
    }

    private boolean isOuterFinish(ZoneId id) {
        return catalog.find(id)
                .filter(zone -> zone.group() == ZoneGroup.OUTER && zone.finish())
                .isPresent();
    }

    private static Geometry sound(ShapeOutline outline) {
        Geometry polygon = outline.polygon();
        return polygon.isValid() ? polygon : GeometryFixer.fix(polygon);
    }

    private void sayShape(Kind kind, ViewDrawing view, ZoneId zone, String text) {
        say(kind, Optional.of(view.view()), Optional.of(zone), text);
    }

    private void say(Kind kind, Optional<View> view, Optional<ZoneId> zone, String text) {
        if (said.add(text)) {
            findings.add(new DiagramFinding(kind, view, zone, text));
        }
    }
}
