package quarterlight.page.photo;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.List;
import quarterlight.page.script.ScriptFont;

/**
 * Words of a note laid out in lines on a plate, upright, no wider and no higher than asked for: words that need more room are
 * set smaller. Sizes in pixels of the photo. Immutable.
 */
final class Plate {
    private static final double FONT = 13;
    private static final double PADDING = 4;
    private static final double MIN_SHARE = 0.4;
    private static final double SHRINK = 0.85;
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private final List<TextLayout> lines;
    private final double unit;
    private final double width;
    private final double height;

    private Plate(List<TextLayout> lines, double unit) {
        this.lines = List.copyOf(lines);
        this.unit = unit;
        this.width = lines.stream().mapToDouble(TextLayout::getAdvance).max().orElse(0) + 2 * PADDING * unit;
        this.height = lines.stream().mapToDouble(Plate::heightOf).sum() + 2 * PADDING * unit;
    }

    /**
     * Lays words out.
     *
     * @param unit pixels of the photo to one unit of drawing
     * @param mostWidth width at which lines break
     * @param mostHeight height within which the plate is to stay, if words of the smallest size allow it
     */
    static Plate of(String words, Font font, double unit, double mostWidth, double mostHeight) {
        Plate plate = laidOut(words, font, unit, mostWidth);
        for (double share = SHRINK; share >= MIN_SHARE && !plate.fits(mostWidth, mostHeight); share *= SHRINK) {
            plate = laidOut(words, font, unit * share, mostWidth);
        }
        return plate;
    }

    private boolean fits(double mostWidth, double mostHeight) {
        return width <= mostWidth && height <= mostHeight;
    }

    private static Plate laidOut(String words, Font font, double unit, double mostWidth) {
        float wrap = (float) Math.max(1, mostWidth - 2 * PADDING * unit);
        Font sized = font.deriveFont((float) (FONT * unit));
        List<TextLayout> lines = new ArrayList<>();
        for (String paragraph : words.split("\\R", -1)) {
            AttributedString text = attributed(plain(paragraph), sized);
            LineBreakMeasurer measurer = new LineBreakMeasurer(text.getIterator(), CONTEXT);
            int end = text.getIterator().getEndIndex();
            while (measurer.getPosition() < end) {
                lines.add(measurer.nextLayout(wrap));
            }
        }
        return new Plate(lines, unit);
    }

    /** Control characters would draw as boxes or not at all; an empty line keeps its height. */
    private static String plain(String paragraph) {
        String plain = paragraph.replaceAll("\\p{Cntrl}", " ");
        return plain.isEmpty() ? " " : plain;
    }

    /** What the typeface lacks is drawn in one that has it, else in one of the computer's own. */
    private static AttributedString attributed(String text, Font font) {
        AttributedString attributed = new AttributedString(text);
        attributed.addAttribute(TextAttribute.FONT, font);
        Font other = new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont(font.getSize2D());
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (!font.canDisplay(text.codePointAt(i))) {
                Font stand = ScriptFont.of(text.codePointAt(i))
                        .map(script -> script.font().deriveFont(font.getSize2D()))
                        .orElse(other);
                attributed.addAttribute(TextAttribute.FONT, stand, i, i + Character.charCount(text.codePointAt(i)));
            }
        }
        return attributed;
    }

    private static double heightOf(TextLayout line) {
        return line.getAscent() + line.getDescent() + line.getLeading();
    }

    /** The plate with its top left corner at a point, or as near to it as it lies within what is shown. */
    Rectangle2D at(double x, double y, Rectangle2D shown) {
        return new Rectangle2D.Double(
                Math.max(shown.getMinX(), Math.min(x, shown.getMaxX() - width)),
                Math.max(shown.getMinY(), Math.min(y, shown.getMaxY() - height)),
                width,
                height);
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    void paint(Graphics2D g, Rectangle2D place, NoteInk ink) {
        double round = PADDING * unit;
        g.setColor(ink.plate());
        g.fill(new RoundRectangle2D.Double(
                place.getX(), place.getY(), place.getWidth(), place.getHeight(), round, round));
        g.setColor(ink.text());
        double y = place.getY() + PADDING * unit;
        for (TextLayout line : lines) {
            double x = line.isLeftToRight()
                    ? place.getX() + PADDING * unit
                    : place.getMaxX() - PADDING * unit - line.getAdvance();
            line.draw(g, (float) x, (float) (y + line.getAscent()));
            y += heightOf(line);
        }
    }
}
