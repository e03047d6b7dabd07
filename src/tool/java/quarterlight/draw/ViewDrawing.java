package quarterlight.draw;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** One view while it is drawn: its window onto the car, its pieces so far and what of the silhouette no zone has taken. */
final class ViewDrawing {
    private static final double FAR_MM = 20_000;
    private static final double NOTABLE_MM2 = 5000;
    private final Window window;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private Geometry silhouette = Shapes.empty();
    private Geometry rest = Shapes.empty();

    /**
     * @param flipFirst the first car coordinate runs from right to left on the page
     * @param flipSecond the second car coordinate runs upward on the page
     */
    record Window(
            String name,
            String title,
            double x0,
            double y0,
            double x1,
            double y1,
            boolean flipFirst,
            boolean flipSecond,
            Lateral lateral) {
        double width() {
            return x1 - x0;
        }

        double height() {
            return y1 - y0;
        }

        /** From car coordinates to the view's own: origin top left, y down, 1 unit = 1 mm. */
        AffineTransformation toPage() {
            return new AffineTransformation(
                    flipFirst ? -1 : 1, 0, flipFirst ? x1 : -x0, 0, flipSecond ? -1 : 1, flipSecond ? y1 : -y0);
        }
    }

    ViewDrawing(Window window) {
        this.window = window;
    }

    Window window() {
        return window;
    }

    List<Piece> pieces() {
        return List.copyOf(pieces);
    }

    /** What a person who changes the drawing should look at: zones that fell into pieces. */
    List<String> remarks() {
        return List.copyOf(remarks);
    }

    Geometry silhouette() {
        return silhouette;
    }

    Geometry rest() {
        return rest;
    }

    void silhouette(Geometry area) {
        silhouette = window.lateral() == Lateral.NONE ? area : whole(half(area));
        rest = half(silhouette);
    }

    void add(Piece piece) {
        pieces.add(piece);
        if (window.lateral() != Lateral.NONE && !piece.kind().equals("zone")) {
            Geometry image = Shapes.mirrored(piece.shape(), window.lateral());
            if (!image.equalsTopo(piece.shape())) {
                pieces.add(piece.with(image));
            }
        }
    }

    void addOnce(Piece piece) {
        pieces.add(piece);
    }

    /** Takes the zone's area out of what is left, so that neighbors share their border. */
    Geometry take(Geometry wanted, String zone) {
        Geometry got = largest(Shapes.common(wanted, rest), zone);
        rest = Shapes.minus(rest, got);
        return got;
    }

    /**
     * Adds a zone; in a view with a middle line a left zone brings its right twin, a middle zone its other half. A zone
     * that goes round one taken before (a panel round its lamp) is drawn whole and below all, so it has no hole.
     *
     * @return the zone as drawn, of twins the left one
     */
    Geometry addZone(Piece piece, boolean cut) {
        String zone = piece.zone().orElseThrow();
        boolean twins = window.lateral() != Lateral.NONE && zone.endsWith("-left");
        boolean halved = window.lateral() != Lateral.NONE && !twins && cut;
        Geometry given = halved ? whole(piece.shape()) : piece.shape();
        Polygon solid = largest(given, zone);
        Geometry drawn =
                solid.getFactory().createPolygon(solid.getExteriorRing().getCoordinates());
        boolean below = cut && drawn.getArea() - solid.getArea() > NOTABLE_MM2;
        pieces.add(below ? 0 : pieces.size(), piece.with(drawn));
        if (twins) {
            String twin = zone.substring(0, zone.length() - "left".length()) + "right";
            pieces.add(
                    below ? 0 : pieces.size(),
                    piece.with(Shapes.mirrored(drawn, window.lateral())).asZone(twin));
        }
        return drawn;
    }

    /** The right side of the car from the drawing of the left side. */
    ViewDrawing otherSide(String name, String title) {
        Window other = new Window(
                name,
                title,
                window.x0(),
                window.y0(),
                window.x1(),
                window.y1(),
                !window.flipFirst(),
                window.flipSecond(),
                window.lateral());
        ViewDrawing drawing = new ViewDrawing(other);
        drawing.silhouette = silhouette;
        drawing.rest = rest;
        for (Piece piece : pieces) {
            drawing.pieces.add(piece.zone()
                    .map(zone -> piece.asZone(zone.replaceAll("-left$", "-right")))
                    .orElse(piece));
        }
        return drawing;
    }

    private Geometry half(Geometry area) {
        Geometry side =
                switch (window.lateral()) {
                    case NONE -> area;
                    case FIRST -> Shapes.common(area, rectangle(0, -FAR_MM));
                    case SECOND -> Shapes.common(area, rectangle(-FAR_MM, 0));
                };
        return side;
    }

    private static Geometry rectangle(double x0, double y0) {
        return Shapes.exact(new org.locationtech.jts.geom.GeometryFactory(Shapes.TENTHS)
                .toGeometry(new org.locationtech.jts.geom.Envelope(x0, FAR_MM, y0, FAR_MM)));
    }

    private Geometry whole(Geometry half) {
        return Shapes.union(half, Shapes.mirrored(half, window.lateral()));
    }

    /** The largest piece; another one above 50 cm2 is remarked on. */
    private Polygon largest(Geometry area, String zone) {
        List<Polygon> found = new ArrayList<>(Shapes.polygons(area));
        found.sort((a, b) -> Double.compare(b.getArea(), a.getArea()));
        if (found.isEmpty()) {
            throw new DrawingFault("zone " + zone + " has no area in view " + window.name());
        }
        String where = window.name() + ": zone " + zone;
        if (found.size() > 1 && found.get(1).getArea() > NOTABLE_MM2) {
            remarks.add(where + " falls into " + found.size() + " pieces, the second of "
                    + Math.round(found.get(1).getArea()) + " mm2 near "
                    + found.get(1).getInteriorPoint().getCoordinate());
        }
        return found.get(0);
    }
}
