package quarterlight.store.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;

/**
 * Outlines and scales as text: an outline as WKT {@code POLYGON} with closed rings (OGC 06-103r4, section 7), a scale
 * as {@code length:x1 y1 x2 y2:MM}, {@code rectangle:x1 y1 … x4 y4:W_MM x H_MM} or {@code coin:x1 y1 … x5 y5:DIAMETER_MM}. Every number reads back exactly.
 */
final class TraceText {
    private static final String POLYGON = "POLYGON ";
    private static final String LENGTH = "length";
    private static final String RECTANGLE = "rectangle";
    private static final String COIN = "coin";

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
        if (scale instanceof PhotoScale.Coin coin) {
            return COIN + ":" + numbers(coin.rim()) + ":" + coin.diameterMm();
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
            if (ends.size() != 2) {
                throw new IllegalArgumentException("not a scale: " + text);
            }
            return new PhotoScale.KnownLength(ends.get(0), ends.get(1), Double.parseDouble(parts[2]));
        }
        if (parts.length == 3 && parts[0].equals(COIN)) {
            return new PhotoScale.Coin(points(parts[1]), Double.parseDouble(parts[2]));
        }
        String[] sizes = parts.length == 3 ? parts[2].split(" x ", -1) : parts;
        if (!parts[0].equals(RECTANGLE) || sizes.length != 2) {
            throw new IllegalArgumentException("not a scale: " + text);
        }
        return new PhotoScale.KnownRectangle(
                points(parts[1]), Double.parseDouble(sizes[0]), Double.parseDouble(sizes[1]));
    }

    /** Points of a note, with blanks and commas between them as in the rings of an outline: {@code x y, x y}. */
    static String of(List<PixelPoint> points) {
        return points.stream().map(p -> p.x() + " " + p.y()).collect(Collectors.joining(", "));
    }

    /** @throws IllegalArgumentException if the text is not such points */
    static List<PixelPoint> pointList(String text) {
        return points(text.replace(",", ""));
    }

    private static String numbers(List<PixelPoint> points) {
        return points.stream().map(p -> p.x() + " " + p.y()).collect(Collectors.joining(" "));
    }

    private static List<PixelPoint> points(String numbers) {
        double[] px = Arrays.stream(numbers.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
        if (px.length % 2 != 0 || px.length < 2) {
            throw new IllegalArgumentException("not pairs of coordinates: " + numbers);
        }
        List<PixelPoint> points = new ArrayList<>();
        for (int i = 0; i < px.length; i += 2) {
            points.add(new PixelPoint(px[i], px[i + 1]));
        }
        return points;
    }
}
