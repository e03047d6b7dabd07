package quarterlight.table.drawn;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Points, a line or an outline in pixels of the upright photo, origin top left, y down; numbers keep every digit they have. Immutable.
 *
 * @param kind what it is
 * @param rings of an outline, closed, the outer one first; of the others one list of points
 */
record DrawnShape(Kind kind, List<List<Pixel>> rings) {
    /** What a shape is. */
    enum Kind {
        POINT,
        LINE,
        OUTLINE,
        /** An outline of four corners that was drawn by two opposite ones. */
        BOX
    }

    /** One point. */
    record Pixel(BigDecimal x, BigDecimal y) {
        String text() {
            return x.toPlainString() + " " + y.toPlainString();
        }
    }

    private static final Pattern RING = Pattern.compile("\\(([^()]+)\\)");
    private static final String SHAPE = "shape";

    DrawnShape {
        rings = rings.stream().map(List::copyOf).toList();
    }

    /** The shape of a row as a table writes it. */
    static DrawnShape of(String table, Map<String, String> cells) {
        if (table.equals(DrawnRow.TRACES)) {
            Matcher ring = RING.matcher(cells.getOrDefault(DrawnRow.OUTLINE, ""));
            return new DrawnShape(
                    Kind.OUTLINE,
                    ring.results().map(found -> pixels(found.group(1))).toList());
        }
        List<Pixel> points = pixels(cells.getOrDefault(DrawnRow.POINTS, ""));
        return switch (cells.getOrDefault(SHAPE, "")) {
            case "box" -> new DrawnShape(Kind.BOX, List.of(corners(points.get(0), points.get(1))));
            case "text" -> new DrawnShape(Kind.POINT, List.of(points));
            default -> new DrawnShape(Kind.LINE, List.of(points));
        };
    }

    private static List<Pixel> pixels(String text) {
        List<BigDecimal> numbers = Arrays.stream(text.strip().split("[\\s,]+"))
                .map(BigDecimal::new)
                .toList();
        List<Pixel> points = new ArrayList<>();
        for (int i = 0; i + 1 < numbers.size(); i += 2) {
            points.add(new Pixel(numbers.get(i), numbers.get(i + 1)));
        }
        return points;
    }

    private static List<Pixel> corners(Pixel a, Pixel b) {
        return List.of(a, new Pixel(b.x(), a.y()), b, new Pixel(a.x(), b.y()), a);
    }

    boolean isBox() {
        return kind == Kind.BOX;
    }

    boolean isArea() {
        return kind == Kind.BOX || kind == Kind.OUTLINE;
    }

    List<Pixel> outer() {
        return rings.get(0);
    }

    /** As the column of its table writes it. */
    String cell() {
        if (kind != Kind.OUTLINE) {
            return outer().stream().map(Pixel::text).collect(Collectors.joining(", "));
        }
        return rings.stream()
                .map(ring -> ring.stream().map(Pixel::text).collect(Collectors.joining(", ", "(", ")")))
                .collect(Collectors.joining(", ", "POLYGON (", ")"));
    }

    /** Left, top, width and height. */
    List<BigDecimal> box() {
        BigDecimal left = outer().stream().map(Pixel::x).reduce(BigDecimal::min).orElseThrow();
        BigDecimal top = outer().stream().map(Pixel::y).reduce(BigDecimal::min).orElseThrow();
        BigDecimal right =
                outer().stream().map(Pixel::x).reduce(BigDecimal::max).orElseThrow();
        BigDecimal bottom =
                outer().stream().map(Pixel::y).reduce(BigDecimal::max).orElseThrow();
        return List.of(left, top, right.subtract(left), bottom.subtract(top));
    }

    /** What it covers, pixels: the outer ring less the inner ones, by the shoelace formula; nothing for points and lines. */
    double area() {
        if (!isArea()) {
            return 0;
        }
        double inner = rings.stream().skip(1).mapToDouble(DrawnShape::area).sum();
        return area(outer()) - inner;
    }

    private static double area(List<Pixel> closed) {
        double twice = 0;
        for (int i = 0; i + 1 < closed.size(); i++) {
            Pixel a = closed.get(i);
            Pixel b = closed.get(i + 1);
            twice += a.x().doubleValue() * b.y().doubleValue() - b.x().doubleValue() * a.y().doubleValue();
        }
        return Math.abs(twice) / 2;
    }

    /** A shape read from pairs of numbers; empty where there are none, or a ring is not closed. */
    static Optional<DrawnShape> read(Kind kind, List<List<Pixel>> rings) {
        boolean closed = kind != Kind.OUTLINE
                || rings.stream()
                        .allMatch(ring -> ring.size() > 3 && ring.get(0).equals(ring.get(ring.size() - 1)));
        boolean filled = !rings.isEmpty() && rings.stream().noneMatch(List::isEmpty);
        return filled && closed ? Optional.of(new DrawnShape(kind, rings)) : Optional.empty();
    }
}
