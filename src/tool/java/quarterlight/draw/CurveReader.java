package quarterlight.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Coordinate;

/**
 * Reads the points of a curve: {@code x,y} separated by blanks; smooth through plain points.
 *
 * <p>{@code x,y!} is a corner, {@code x,y~20} a corner rounded from 20 mm before to 20 mm after it, {@code x,y@30} a smooth
 * point that the curve passes in the direction of 30 degrees (0 = growing x, 90 = growing y); {@code x,y!@30} is a corner left in that direction, {@code x,y@30!} one reached in it; {@code ..belt(560,1760)} takes in the part of
 * the curve {@code belt} between two x values. Two corners in a row are joined by a straight line.
 */
final class CurveReader {
    private record Knot(Coordinate at, boolean corner, double round, OptionalDouble arriving, OptionalDouble leaving) {
        boolean ends() {
            return corner || arriving.isPresent() || leaving.isPresent();
        }
    }

    private static final Pattern KNOT = Pattern.compile("([^!~@]+)((?:!|~.+|@.+|!@.+)?)");

    private final Numbers numbers;

    CurveReader(Numbers numbers) {
        this.numbers = numbers;
    }

    Curve open(String text) {
        List<Knot> knots = knots(text);
        List<Double> rounds = new ArrayList<>();
        List<Coordinate> flat = run(knots, rounds);
        return new Curve(rounded(flat, rounds, false));
    }

    /** A closed curve; the last point is joined to the first. */
    Curve closed(String text) {
        List<Knot> knots = knots(text);
        int first = -1;
        for (int i = 0; i < knots.size() && first < 0; i++) {
            first = knots.get(i).ends() ? i : -1;
        }
        if (first < 0) {
            return new Curve(HobbySpline.closed(knots.stream().map(Knot::at).toList()));
        }
        List<Knot> turned = new ArrayList<>(knots.subList(first, knots.size()));
        turned.addAll(knots.subList(0, first));
        Knot start = turned.get(0);
        turned.add(start);
        List<Double> rounds = new ArrayList<>();
        List<Coordinate> flat = run(turned, rounds);
        return new Curve(rounded(flat, rounds, true));
    }

    private List<Coordinate> run(List<Knot> knots, List<Double> rounds) {
        List<Coordinate> flat = new ArrayList<>(List.of(knots.get(0).at()));
        rounds.add(knots.get(0).round());
        int start = 0;
        for (int i = 1; i < knots.size(); i++) {
            Knot knot = knots.get(i);
            boolean last = i == knots.size() - 1;
            if (!knot.ends() && !last) {
                continue;
            }
            List<Coordinate> piece =
                    knots.subList(start, i + 1).stream().map(Knot::at).toList();
            List<Coordinate> smooth = HobbySpline.open(piece, knots.get(start).leaving(), knot.arriving());
            for (int k = 1; k < smooth.size(); k++) {
                flat.add(smooth.get(k));
                rounds.add(k == smooth.size() - 1 ? knot.round() : 0);
            }
            start = i;
        }
        return flat;
    }

    private List<Knot> knots(String text) {
        List<Knot> knots = new ArrayList<>();
        for (String token : text.trim().split("\\s+")) {
            if (token.startsWith("..")) {
                for (Coordinate point : part(token.substring(2))) {
                    knots.add(new Knot(point, true, 0, OptionalDouble.empty(), OptionalDouble.empty()));
                }
            } else {
                knots.add(knot(token));
            }
        }
        return knots;
    }

    private Knot knot(String token) {
        Matcher parts = KNOT.matcher(token);
        if (!parts.matches()) {
            throw new DrawingFault("\"" + token + "\" is not a point x,y");
        }
        String mark = parts.group(2);
        double round = mark.startsWith("~") ? numbers.value(mark.substring(1)) : 0;
        OptionalDouble direction = mark.contains("@")
                ? OptionalDouble.of(Math.toRadians(
                        numbers.value(mark.substring(mark.indexOf('@') + 1).replace("!", ""))))
                : OptionalDouble.empty();
        boolean corner = mark.contains("!") || round > 0;
        boolean leavesOnly = mark.startsWith("!@");
        boolean arrivesOnly = mark.startsWith("@") && mark.endsWith("!");
        List<String> pair = Numbers.split(parts.group(1));
        if (pair.size() != 2) {
            throw new DrawingFault("\"" + token + "\" is not a point x,y");
        }
        return new Knot(
                new Coordinate(numbers.value(pair.get(0)), numbers.value(pair.get(1))),
                corner,
                round,
                leavesOnly ? OptionalDouble.empty() : direction,
                arrivesOnly ? OptionalDouble.empty() : direction);
    }

    private List<Coordinate> part(String text) {
        int open = text.indexOf('(');
        if (open < 0) {
            return numbers.curve(text).points();
        }
        List<String> ends = Numbers.split(text.substring(open + 1, text.length() - 1));
        return numbers.curve(text.substring(0, open)).between(numbers.value(ends.get(0)), numbers.value(ends.get(1)));
    }

    private static List<Coordinate> rounded(List<Coordinate> flat, List<Double> rounds, boolean closed) {
        int n = closed ? flat.size() - 1 : flat.size();
        List<Coordinate> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double round = rounds.get(i);
            if (round <= 0 || !closed && (i == 0 || i == n - 1)) {
                out.add(flat.get(i));
                continue;
            }
            Coordinate corner = flat.get(i);
            Coordinate before = walk(flat, i, -1, round, n);
            Coordinate after = walk(flat, i, 1, round, n);
            while (out.size() > 1 && out.get(out.size() - 1).distance(corner) < before.distance(corner)) {
                out.remove(out.size() - 1);
            }
            int steps = 8;
            for (int k = 0; k <= steps; k++) {
                double t = (double) k / steps;
                double s = 1 - t;
                out.add(new Coordinate(
                        s * s * before.x + 2 * s * t * corner.x + t * t * after.x,
                        s * s * before.y + 2 * s * t * corner.y + t * t * after.y));
            }
            while (i + 1 < n && rounds.get(i + 1) <= 0 && flat.get(i + 1).distance(corner) < after.distance(corner)) {
                i++;
            }
        }
        if (closed) {
            out.add(out.get(0));
        }
        return out;
    }

    private static Coordinate walk(List<Coordinate> flat, int from, int step, double distance, int n) {
        Coordinate here = flat.get(from);
        double left = distance;
        int at = from;
        for (int guard = 0; guard < n; guard++) {
            int next = at + step;
            if (next < 0 || next >= n) {
                next = Math.floorMod(next, n);
            }
            Coordinate there = flat.get(next);
            double length = here.distance(there);
            if (length >= left) {
                double t = left / length;
                return new Coordinate(here.x + t * (there.x - here.x), here.y + t * (there.y - here.y));
            }
            left -= length;
            here = there;
            at = next;
        }
        return here;
    }
}
