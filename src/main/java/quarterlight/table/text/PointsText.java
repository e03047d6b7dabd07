package quarterlight.table.text;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.row.CellRefused;

/** Points of a photo as tables write them: {@code x y, x y}; the commas may be left out. */
public final class PointsText {
    private PointsText() {}

    /**
     * Reads pairs of pixel numbers.
     *
     * @param what whose points they are, for the message: {@code the scale}
     * @param how the rest of the message, that says how to write it
     * @throws CellRefused if a number is none or stands alone
     */
    public static List<PixelPoint> parse(String column, String text, String what, String how) throws CellRefused {
        String[] numbers = text.strip().split("[\\s,]+");
        if (numbers.length % 2 == 1) {
            throw new CellRefused(column, say("cell.points.odd", what, numbers.length, how));
        }
        List<PixelPoint> points = new ArrayList<>();
        for (int i = 0; i < numbers.length; i += 2) {
            points.add(
                    new PixelPoint(number(column, numbers[i], what, how), number(column, numbers[i + 1], what, how)));
        }
        return points;
    }

    private static double number(String column, String text, String what, String how) throws CellRefused {
        return NumberText.parse(text, false)
                .map(BigDecimal::doubleValue)
                .orElseThrow(() -> new CellRefused(column, say("cell.points.number", Quoted.of(text), what, how)));
    }

    public static String of(List<PixelPoint> points) {
        return points.stream()
                .map(p -> NumberText.of(p.x()) + " " + NumberText.of(p.y()))
                .collect(Collectors.joining(", "));
    }
}
