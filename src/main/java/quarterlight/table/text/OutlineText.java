package quarterlight.table.text;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.row.CellRefused;

/**
 * Outlines as well-known text (WKT, OGC 06-103r4 / ISO 19125): {@code POLYGON ((x y, …), (hole), …)}, rings closed, pixels of the
 * upright photo.
 */
public final class OutlineText {
    private static final int MIN_CLOSED_POINTS = 4;

    private OutlineText() {}

    /** @throws CellRefused if the text is not one polygon with closed rings */
    public static Outline parse(String column, String text) throws CellRefused {
        if (!(read(column, text) instanceof Polygon polygon) || polygon.isEmpty()) {
            throw new CellRefused(column, say("cell.outline.form", Quoted.of(text)));
        }
        List<List<PixelPoint>> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            holes.add(ring(column, polygon.getInteriorRingN(i)));
        }
        return new Outline(ring(column, polygon.getExteriorRing()), holes);
    }

    private static Geometry read(String column, String text) throws CellRefused {
        String shape = text.strip().toUpperCase(Locale.ROOT);
        if (!shape.startsWith("POLYGON")) {
            throw new CellRefused(column, say("cell.outline.form", Quoted.of(text)));
        }
        try {
            return new WKTReader().read(text);
        } catch (ParseException e) {
            throw new CellRefused(column, say("cell.outline.text", Quoted.of(text)));
        } catch (IllegalArgumentException e) {
            throw new CellRefused(column, say("cell.outline.open"));
        }
    }

    private static List<PixelPoint> ring(String column, LinearRing ring) throws CellRefused {
        Coordinate[] points = ring.getCoordinates();
        if (points.length < MIN_CLOSED_POINTS) {
            throw new CellRefused(column, say("cell.outline.few"));
        }
        List<PixelPoint> open = new ArrayList<>();
        for (int i = 0; i < points.length - 1; i++) {
            if (!Double.isFinite(points[i].x) || !Double.isFinite(points[i].y)) {
                throw new CellRefused(column, say("cell.outline.number", (i + 1)));
            }
            open.add(new PixelPoint(points[i].x, points[i].y));
        }
        return open;
    }

    public static String of(Outline outline) {
        List<String> rings = new ArrayList<>();
        rings.add(ringText(outline.shell()));
        outline.holes().forEach(hole -> rings.add(ringText(hole)));
        return "POLYGON (" + String.join(", ", rings) + ")";
    }

    private static String ringText(List<PixelPoint> open) {
        List<PixelPoint> closed = new ArrayList<>(open);
        closed.add(open.get(0));
        return closed.stream()
                .map(p -> NumberText.of(p.x()) + " " + NumberText.of(p.y()))
                .collect(Collectors.joining(", ", "(", ")"));
    }
}
