package quarterlight.table.cell;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.visit.PhotoScale;
import quarterlight.visit.PixelPoint;

/** Scales as tables write them: {@code length:x1 y1 x2 y2:MM} or {@code rectangle:x1 y1 x2 y2 x3 y3 x4 y4:W_MM x H_MM}. */
public final class ScaleText {
    private static final Pattern FORM = Pattern.compile("(length|rectangle)\\s*:([^:]*):([^:]*)");
    private static final Pattern SIDES = Pattern.compile("(\\S+)\\s*[x\u00d7]\\s*(\\S+)");
    private static final String HOW = "; write length:x1 y1 x2 y2:MM or rectangle:x1 y1 x2 y2 x3 y3 x4 y4:W_MM x H_MM";
    private static final int LENGTH_NUMBERS = 4;
    private static final int RECTANGLE_NUMBERS = 8;

    private ScaleText() {}

    /** @throws CellRefused if the text has neither form, a number is none, or a size is not above 0 mm */
    public static PhotoScale parse(String column, String text) throws CellRefused {
        Matcher m = FORM.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!m.matches()) {
            throw new CellRefused(column, "the scale is " + Quoted.of(text) + HOW);
        }
        List<PixelPoint> points = points(column, m.group(2));
        if (m.group(1).equals("length")) {
            requireCount(column, points, LENGTH_NUMBERS, "a length");
            if (points.get(0).equals(points.get(1))) {
                throw new CellRefused(column, "the scale's two ends are one point; mark both ends of the known length");
            }
            return new PhotoScale.KnownLength(points.get(0), points.get(1), size(column, m.group(3)));
        }
        requireCount(column, points, RECTANGLE_NUMBERS, "a rectangle");
        Matcher sides = SIDES.matcher(m.group(3).strip());
        if (!sides.matches()) {
            throw new CellRefused(
                    column, "the rectangle's sides are " + Quoted.of(m.group(3)) + "; write them as 85.6 x 53.98");
        }
        return new PhotoScale.KnownRectangle(points, size(column, sides.group(1)), size(column, sides.group(2)));
    }

    private static List<PixelPoint> points(String column, String text) throws CellRefused {
        String[] numbers = text.strip().split("[\\s,]+");
        List<PixelPoint> points = new ArrayList<>();
        for (int i = 0; i + 1 < numbers.length; i += 2) {
            points.add(new PixelPoint(number(column, numbers[i]), number(column, numbers[i + 1])));
        }
        if (numbers.length % 2 == 1) {
            throw new CellRefused(column, "the scale has " + numbers.length + " numbers before its size" + HOW);
        }
        return points;
    }

    private static void requireCount(String column, List<PixelPoint> points, int numbers, String what)
            throws CellRefused {
        if (points.size() * 2 != numbers) {
            throw new CellRefused(column, what + " has " + numbers + " pixel numbers, not " + points.size() * 2 + HOW);
        }
    }

    private static double number(String column, String text) throws CellRefused {
        return NumberText.parse(text, false)
                .map(BigDecimal::doubleValue)
                .orElseThrow(() -> new CellRefused(column, Quoted.of(text) + " in the scale is not a number" + HOW));
    }

    private static double size(String column, String text) throws CellRefused {
        String bare = text.strip().replaceFirst("\\s*mm$", "");
        Optional<BigDecimal> mm = NumberText.parse(bare, false).filter(value -> value.signum() > 0);
        return mm.map(BigDecimal::doubleValue)
                .orElseThrow(() -> new CellRefused(
                        column, "the scale's size " + Quoted.of(bare) + " is not a number of mm above 0" + HOW));
    }

    public static String of(PhotoScale scale) {
        if (scale instanceof PhotoScale.KnownLength length) {
            return "length:" + pair(length.from()) + " " + pair(length.to()) + ":" + NumberText.of(length.mm());
        }
        PhotoScale.KnownRectangle rectangle = (PhotoScale.KnownRectangle) scale;
        List<String> corners = rectangle.corners().stream().map(ScaleText::pair).toList();
        return "rectangle:" + String.join(" ", corners) + ":" + NumberText.of(rectangle.widthMm()) + " x "
                + NumberText.of(rectangle.heightMm());
    }

    private static String pair(PixelPoint point) {
        return NumberText.of(point.x()) + " " + NumberText.of(point.y());
    }
}
