package quarterlight.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * The functions of areas.
 *
 * <p>{@code above below before after (curve)}: the side of a curve that runs across (first two) or up (last two), carried on
 * level (upright) beyond its ends; {@code band(curve,width)}: a stripe along a curve, square ends; {@code pipe(curve,width)}:
 * the same with round ends; {@code edge(area,width)}: a stripe of that width inside the rim of an area; {@code round(area,r)}: its corners
 * rounded, outward and inward; {@code grow(area,mm)}; {@code circle(x,y,r)}, {@code ellipse(x,y,rx,ry)},
 * {@code box(x0,y0,x1,y1[,r])}; {@code mirror(area)}, {@code sym(area)}: the area with its mirror image; {@code move(area,dx,dy)};
 * {@code swap(area)}: first and second coordinate exchanged.
 */
final class AreaFunctions {
    private static final double FAR_MM = 20_000;
    private final Numbers numbers;
    private Lateral lateral = Lateral.NONE;

    AreaFunctions(Numbers numbers) {
        this.numbers = numbers;
    }

    void lateral(Lateral axis) {
        lateral = axis;
    }

    Geometry call(String function, List<String> arguments, AreaReader areas) {
        return switch (function) {
            case "above" -> side(arguments, true, FAR_MM);
            case "below" -> side(arguments, true, -FAR_MM);
            case "before" -> side(arguments, false, -FAR_MM);
            case "after" -> side(arguments, false, FAR_MM);
            case "band" -> Shapes.stripe(numbers.curve(arguments.get(0)), number(arguments, 1), false);
            case "pipe" -> Shapes.stripe(numbers.curve(arguments.get(0)), number(arguments, 1), true);
            case "edge" -> edge(areas.read(arguments.get(0)), number(arguments, 1));
            case "round" -> Shapes.rounded(areas.read(arguments.get(0)), number(arguments, 1));
            case "grow" -> Shapes.grown(areas.read(arguments.get(0)), number(arguments, 1));
            case "circle" ->
                ellipse(number(arguments, 0), number(arguments, 1), number(arguments, 2), number(arguments, 2));
            case "ellipse" ->
                ellipse(number(arguments, 0), number(arguments, 1), number(arguments, 2), number(arguments, 3));
            case "box" -> box(arguments);
            case "mirror" -> Shapes.mirrored(areas.read(arguments.get(0)), lateral);
            case "sym" -> {
                Geometry area = areas.read(arguments.get(0));
                yield Shapes.union(area, Shapes.mirrored(area, lateral));
            }
            case "swap" ->
                Shapes.exact(new AffineTransformation(0, 1, 0, 1, 0, 0).transform(areas.read(arguments.get(0))));
            case "move" ->
                Shapes.exact(AffineTransformation.translationInstance(number(arguments, 1), number(arguments, 2))
                        .transform(areas.read(arguments.get(0))));
            default -> throw new DrawingFault("there is no area function " + function);
        };
    }

    private double number(List<String> arguments, int index) {
        if (index >= arguments.size()) {
            throw new DrawingFault("an area function lacks its number " + (index + 1) + ": " + arguments);
        }
        return numbers.value(arguments.get(index));
    }

    private Geometry side(List<String> arguments, boolean across, double far) {
        List<Coordinate> ring = new ArrayList<>(numbers.curve(arguments.get(0)).points());
        Coordinate first = ring.get(0);
        Coordinate last = ring.get(ring.size() - 1);
        if (across ? first.x > last.x : first.y > last.y) {
            Collections.reverse(ring);
            first = ring.get(0);
            last = ring.get(ring.size() - 1);
        }
        if (across) {
            ring.add(0, new Coordinate(-FAR_MM, first.y));
            ring.add(new Coordinate(FAR_MM, last.y));
            ring.add(new Coordinate(FAR_MM, far));
            ring.add(new Coordinate(-FAR_MM, far));
        } else {
            ring.add(0, new Coordinate(first.x, -FAR_MM));
            ring.add(new Coordinate(last.x, FAR_MM));
            ring.add(new Coordinate(far, FAR_MM));
            ring.add(new Coordinate(far, -FAR_MM));
        }
        ring.add(ring.get(0));
        return Shapes.polygon(new Curve(ring));
    }

    private static Geometry edge(Geometry area, double width) {
        return Shapes.minus(area, Shapes.grown(area, -width));
    }

    private static Geometry ellipse(double x, double y, double rx, double ry) {
        int n = Math.max(24, (int) Math.ceil(Math.PI * Math.sqrt(Math.max(rx, ry) / 0.2) / 4) * 4);
        List<Coordinate> ring = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            double angle = 2 * Math.PI * (i % n) / n;
            ring.add(new Coordinate(x + rx * Math.cos(angle), y + ry * Math.sin(angle)));
        }
        return Shapes.polygon(new Curve(ring));
    }

    private Geometry box(List<String> arguments) {
        double x0 = number(arguments, 0);
        double y0 = number(arguments, 1);
        double x1 = number(arguments, 2);
        double y1 = number(arguments, 3);
        Geometry sharp = Shapes.polygon(new Curve(List.of(
                new Coordinate(x0, y0),
                new Coordinate(x1, y0),
                new Coordinate(x1, y1),
                new Coordinate(x0, y1),
                new Coordinate(x0, y0))));
        return arguments.size() > 4 ? Shapes.rounded(sharp, number(arguments, 4)) : sharp;
    }
}
