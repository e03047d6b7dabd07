package quarterlight.store.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import quarterlight.visit.Outline;
import quarterlight.visit.PhotoScale;
import quarterlight.visit.PixelPoint;

/**
 * Outlines and scales as text: an outline as WKT {@code POLYGON} with closed rings (OGC 06-103r4, section 7), a scale
 * as {@code length:x1 y1 x2 y2:MM} or {@code rectangle:x1 y1 … x4 y4:W_MM x H_MM}. Every number reads back exactly.
 */
final class TraceText {
    private static final String POLYGON = "POLYGON ";
    private static final String LENGTH = "length";
    private static final String RECTANGLE = "rectangle";

    private TraceText() {}

    static String of(Outline outline) {
        List<String> rings = new ArrayList<>();
        rings.add(ring(outline.shell()));
        outline.holes().forEach(hole -> rings.add(ring(hole)));
        return POLYGON + "(" + String.join(", ", rings) + ")";
    }

    private static String ring(List<PixelPoint> points) {
        List<PixelPoint> closed = new ArrayList<>(points);
        closed.add(points.get(0));
        return closed.stream().map(p -> p.x() + " " + p.y()).collect(Collectors.joining(", ", "(", ")"));
    }

    /** @throws IllegalArgumentException if the text is not such an outline */
    static Outline outline(String text) {
        String body = text.replaceFirst("^POLYGON \\(\\(", "").replaceFirst("\\)\\)$", "");
        if (body.length() != text.length() - POLYGON.length() - 4) {
            throw new IllegalArgumentException("not a polygon: " + text);
        }
        List<List<PixelPoint>> rings = new ArrayList<>();
        for (String ring : body.split("\\), \\(", -1)) {
            rings.add(open(points(ring.replace(",", ""))));
        }
        return new Outline(rings.get(0), rings.subList(1, rings.size()));
    }

    private static List<PixelPoint> open(List<PixelPoint> closed) {
        return closed.subList(0, closed.size() - 1);
    }

    static String of(PhotoScale scale) {
        if (scale instanceof PhotoScale.KnownLength length) {
            return LENGTH + ":" + numbers(List.of(length.from(), length.to())) + ":" + length.mm();
        }
        PhotoScale.KnownRectangle rectangle = (PhotoScale.KnownRectangle) scale;
        return RECTANGLE + ":" + numbers(rectangle.corners()) + ":" + rectangle.widthMm() + " x "
                + rectangle.heightMm();
    }

    /** @throws IllegalArgumentException if the text is not such a scale */
    static PhotoScale scale(String text) {
        String[] parts = text.split(":", -1);
        if (parts.length == 3 && parts[0].equals(LENGTH)) {
            List<PixelPoint> ends = points(parts[1]);
            return new PhotoScale.KnownLength(ends.get(0), ends.get(1), Double.parseDouble(parts[2]));
        }
        String[] sizes = parts.length == 3 ? parts[2].split(" x ", -1) : parts;
        if (!parts[0].equals(RECTANGLE) || sizes.length != 2) {
            throw new IllegalArgumentException("not a scale: " + text);
        }
        return new PhotoScale.KnownRectangle(
                points(parts[1]), Double.parseDouble(sizes[0]), Double.parseDouble(sizes[1]));
    }

    private static String numbers(List<PixelPoint> points) {
        return points.stream().map(p -> p.x() + " " + p.y()).collect(Collectors.joining(" "));
    }

    private static List<PixelPoint> points(String numbers) {
        double[] px = Arrays.stream(numbers.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
        if (px.length % 2 != 0 || px.length < 4) {
            throw new IllegalArgumentException("not pairs of coordinates: " + numbers);
        }
        List<PixelPoint> points = new ArrayList<>();
        for (int i = 0; i < px.length; i += 2) {
            points.add(new PixelPoint(px[i], px[i + 1]));
        }
        return points;
    }
}
