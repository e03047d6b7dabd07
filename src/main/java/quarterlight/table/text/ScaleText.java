package quarterlight.table.text;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.row.CellRefused;

/**
 * Scales as tables write them: {@code length:x1 y1 x2 y2:MM}, {@code rectangle:x1 y1 x2 y2 x3 y3 x4 y4:W_MM x H_MM}, or
 * {@code coin:x1 y1 x2 y2 … x5 y5:DIAMETER_MM} with five points or more on the rim.
 */
public final class ScaleText {
    private static final Pattern FORM = Pattern.compile("(length|rectangle|coin)\\s*:([^:]*):([^:]*)");
    private static final Pattern SIDES = Pattern.compile("(\\S+)\\s*[x\u00d7]\\s*(\\S+)");
    private static final int LENGTH_NUMBERS = 4;
    private static final int RECTANGLE_NUMBERS = 8;

    private ScaleText() {}

    /** @throws CellRefused if the text has neither form, a number is none, or a size is not above 0 mm */
    public static PhotoScale parse(String column, String text) throws CellRefused {
        Matcher m = FORM.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!m.matches()) {
            throw new CellRefused(column, say("cell.scale.form", Quoted.of(text), how()));
        }
        List<PixelPoint> points = PointsText.parse(column, m.group(2), say("cell.scale.it"), how());
        if (m.group(1).equals("length")) {
            requireCount(column, points, LENGTH_NUMBERS, say("cell.scale.length"));
            if (points.get(0).equals(points.get(1))) {
                throw new CellRefused(column, say("cell.scale.ends"));
            }
            return new PhotoScale.KnownLength(points.get(0), points.get(1), size(column, m.group(3)));
        }
        if (m.group(1).equals("coin")) {
            if (points.size() < PhotoScale.Coin.MIN_POINTS) {
                throw new CellRefused(column, say("cell.scale.coin", PhotoScale.Coin.MIN_POINTS, points.size(), how()));
            }
            return new PhotoScale.Coin(points, size(column, m.group(3)));
        }
        requireCount(column, points, RECTANGLE_NUMBERS, say("cell.scale.rectangle"));
        Matcher sides = SIDES.matcher(m.group(3).strip());
        if (!sides.matches()) {
            throw new CellRefused(column, say("cell.scale.sides", Quoted.of(m.group(3))));
        }
        return new PhotoScale.KnownRectangle(points, size(column, sides.group(1)), size(column, sides.group(2)));
    }

    private static String how() {
        return say("cell.scale.how");
    }

    private static void requireCount(String column, List<PixelPoint> points, int numbers, String what)
            throws CellRefused {
        if (points.size() * 2 != numbers) {
            throw new CellRefused(column, say("cell.scale.count", what, numbers, points.size() * 2, how()));
        }
    }

    private static double size(String column, String text) throws CellRefused {
        String bare = text.strip().replaceFirst("\\s*mm$", "");
        Optional<BigDecimal> mm = NumberText.parse(bare, false).filter(value -> value.signum() > 0);
        return mm.map(BigDecimal::doubleValue)
                .orElseThrow(() -> new CellRefused(column, say("cell.scale.size", Quoted.of(bare), how())));
    }

    public static String of(PhotoScale scale) {
        if (scale instanceof PhotoScale.KnownLength length) {
            return "length:" + pair(length.from()) + " " + pair(length.to()) + ":" + NumberText.of(length.mm());
        }
        if (scale instanceof PhotoScale.Coin coin) {
            return "coin:" + coin.rim().stream().map(ScaleText::pair).collect(Collectors.joining(" ")) + ":"
                    + NumberText.of(coin.diameterMm());
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
