package quarterlight.diagram.scene;

import static quarterlight.language.Sentences.say;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.TextMeasure;

/**
 * The key of zones whose words stand as a number on the sheet. A zone bears the same number in every view; numbers run in the order of
 * drawing, and only those that are used are listed.
 */
final class NameKey {
    /** Size of a number on the drawing, px. */
    static final double NUMBER_SIZE = 9;

    private static final double SIZE = 10;
    private static final double LINE = 13;
    private static final double HEAD = 16;
    private static final double NUMBER_ROOM = 22;
    private static final double BETWEEN = 14;

    private final Map<ZoneId, Integer> numbers = new LinkedHashMap<>();

    /** The numbers that the zones of a diagram would bear. */
    NameKey(BodyDiagram diagram, DiagramInk ink) {
        diagram.zones().stream().filter(ink::isNamed).forEach(zone -> numbers.put(zone, numbers.size() + 1));
    }

    /** The stand-in for the words of a zone; empty for a zone that shows a value or nothing. */
    Optional<String> numberOf(ZoneId zone) {
        return Optional.ofNullable(numbers.get(zone)).map(String::valueOf);
    }

    /** How high a key of some zones is at a width, px; 0 for none. */
    static double height(List<ZoneId> zones, DiagramInk ink, double width, TextMeasure measure) {
        if (zones.isEmpty()) {
            return 0;
        }
        int columns = columns(zones, ink, width, measure);
        int rows = (zones.size() + columns - 1) / columns;
        return HEAD + LINE * rows + 8;
    }

    private static int columns(List<ZoneId> zones, DiagramInk ink, double width, TextMeasure measure) {
        double widest = zones.stream()
                .mapToDouble(zone -> measure.width(ink.textOf(zone), SIZE, false))
                .max()
                .orElse(0);
        return (int) Math.max(1, Math.floor(width / (NUMBER_ROOM + widest + BETWEEN)));
    }

    /** Draws the key of some zones into a band, down the columns. */
    List<DrawnItem> draw(
            List<ZoneId> zones, DiagramInk ink, Rectangle2D band, InkPalette palette, TextMeasure measure) {
        List<DrawnItem> drawn = new ArrayList<>();
        if (zones.isEmpty()) {
            return drawn;
        }
        String head = say("diagram.scene.key");
        drawn.add(words(head, band.getX(), band.getY() + SIZE, false, palette.secondInk(), measure));
        int columns = columns(zones, ink, band.getWidth(), measure);
        int rows = (zones.size() + columns - 1) / columns;
        for (int i = 0; i < zones.size(); i++) {
            ZoneId zone = zones.get(i);
            int column = i / rows;
            double x = band.getX() + column * (band.getWidth() / columns);
            double y = band.getY() + HEAD + LINE * (i % rows) + SIZE;
            String number = String.valueOf(numbers.get(zone));
            double wide = measure.width(number, SIZE, true);
            drawn.add(words(number, x + NUMBER_ROOM - 6 - wide, y, true, palette.ink(), measure));
            drawn.add(words(ink.textOf(zone), x + NUMBER_ROOM, y, false, palette.ink(), measure));
        }
        return drawn;
    }

    private static DrawnItem.Words words(
            String text, double x, double y, boolean bold, java.awt.Color color, TextMeasure measure) {
        return new DrawnItem.Words(text, x, y, SIZE, bold, color, measure.width(text, SIZE, bold));
    }
}
