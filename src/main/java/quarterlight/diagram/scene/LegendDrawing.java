package quarterlight.diagram.scene;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.SceneColors;
import quarterlight.diagram.ink.Surface;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.finish.scale.ThicknessSteps;

/** Draws the legend into its band: the steps of the tint with their ranges (the limits alone where these find no room), then the keys, in as many rows as the width asks for. */
final class LegendDrawing {
    private static final double SIZE = 11;
    private static final double TITLE = 14;
    private static final double SWATCH_HEIGHT = 15;
    private static final double GAP = 30;
    private static final double KEY_GAP = 12;
    private static final double BLOCK = 52;
    private static final double LINE = 13;
    private static final double SWATCH = 26;
    private static final double EDGE = 6;

    /** The steps under a title of two lines, and one row of keys. */
    static final double USUAL_HEIGHT = LINE + 2 * BLOCK + EDGE;

    private final Legend legend;
    private final Rectangle2D band;
    private final SceneColors colors;
    private final TextMeasure measure;
    private final List<DrawnItem> drawn = new ArrayList<>();
    private double x;
    private double y;

    private LegendDrawing(Legend legend, Rectangle2D band, SceneColors colors, TextMeasure measure) {
        this.legend = legend;
        this.band = band;
        this.colors = colors;
        this.measure = measure;
        x = band.getX();
        y = band.getY();
    }

    static List<DrawnItem> draw(Legend legend, Rectangle2D band, SceneColors colors, TextMeasure measure) {
        LegendDrawing drawing = new LegendDrawing(legend, band, colors, measure);
        drawing.drawAll();
        return List.copyOf(drawing.drawn);
    }

    /** How high the legend comes out at a width, px. */
    static double height(Legend legend, double width, TextMeasure measure) {
        LegendDrawing drawing = new LegendDrawing(
                legend,
                new Rectangle2D.Double(0, 0, width, 0),
                new SceneColors(InkPalette.LIGHT, Ramp.load()),
                measure);
        drawing.drawAll();
        return drawing.drawn.isEmpty() ? 0 : drawing.y + BLOCK + EDGE;
    }

    private void drawAll() {
        legend.steps().ifPresent(this::steps);
        legend.keys().forEach(this::key);
    }

    /** Takes room for a block and gives its left edge; begins another row where the first is full. */
    private double take(double width) {
        if (x > band.getX() && x + width > band.getMaxX()) {
            x = band.getX();
            y += BLOCK;
        }
        double left = x;
        x += width + GAP;
        return left;
    }

    private void steps(Legend.Steps steps) {
        double whole = steps.ranges().stream()
                        .mapToDouble(range -> measure.width(range, SIZE, false))
                        .max()
                        .orElse(0)
                + 8;
        boolean narrow = whole * steps.ranges().size() > band.getWidth();
        double wide = narrow ? band.getWidth() / steps.ranges().size() : whole;
        List<String> title =
                wrapped(steps.title(), Math.max(wide * steps.ranges().size(), 0.94 * band.getWidth()));
        double widest = title.stream()
                .mapToDouble(line -> measure.width(line, SIZE, false))
                .max()
                .orElse(0);
        double left = take(Math.max(wide * steps.ranges().size(), widest));
        for (int i = 0; i < title.size(); i++) {
            words(title.get(i), left, y + TITLE + i * LINE, colors.palette().secondInk());
        }
        y += LINE * (title.size() - 1);
        for (int i = 0; i < steps.ranges().size(); i++) {
            Rectangle2D swatch = new Rectangle2D.Double(left + i * wide, top(), wide, SWATCH_HEIGHT);
            drawn.add(DrawnItem.Filled.of(swatch, colors.ramp().at(ThicknessSteps.LOWEST + i, colors.palette())));
            drawn.add(DrawnItem.Stroked.of(swatch, colors.palette().gap(), 0.6));
            if (!narrow) {
                centered(steps.ranges().get(i), left + (i + 0.5) * wide);
            } else if (i > 0) {
                centered(steps.limits().get(i - 1), left + i * wide);
            }
        }
        if (title.size() > 1) {
            x = band.getMaxX() + 1;
        }
    }

    private void centered(String text, double middle) {
        words(
                text,
                middle - measure.width(text, SIZE, false) / 2,
                below(),
                colors.palette().ink());
    }

    /** Swatches beside each other; those that do not fit begin another row. */
    private void key(Legend.Key key) {
        double width = -KEY_GAP;
        for (Legend.Swatch swatch : key.swatches()) {
            width += wide(swatch) + KEY_GAP;
        }
        double titleWide = measure.width(key.title(), SIZE, false);
        double at = take(Math.min(band.getWidth(), Math.max(width, titleWide)));
        words(key.title(), at, y + TITLE, colors.palette().secondInk());
        for (Legend.Swatch swatch : key.swatches()) {
            if (at + wide(swatch) > band.getMaxX() + 0.5 && at > band.getX()) {
                at = band.getX();
                y += BLOCK - LINE;
                x = at;
            }
            sample(swatch, at);
            words(swatch.words(), at, below(), colors.palette().ink());
            at += wide(swatch) + KEY_GAP;
            x = Math.max(x, at + GAP - KEY_GAP);
        }
    }

    private double top() {
        return y + TITLE + 6;
    }

    private double below() {
        return top() + SWATCH_HEIGHT + SIZE + 2;
    }

    private double wide(Legend.Swatch swatch) {
        return Math.max(SWATCH, measure.width(swatch.words(), SIZE, false));
    }

    private void sample(Legend.Swatch swatch, double left) {
        InkPalette palette = colors.palette();
        Rectangle2D box = new Rectangle2D.Double(left, top(), SWATCH, SWATCH_HEIGHT);
        Color ink = colors.textureOn(palette.ground());
        double middle = top() + SWATCH_HEIGHT / 2;
        switch (swatch.sample()) {
            case PHOTO -> drawn.addAll(DiscDrawing.disc("7", left + 9, middle, palette, measure));
            case MATTER -> drawn.addAll(LetterDrawing.square("A", false, left + 8, middle, palette, measure));
            case GRAVE_MATTER -> drawn.addAll(LetterDrawing.square("A", true, left + 8, middle, palette, measure));
            case HATCH -> {
                drawn.add(DrawnItem.Stroked.texture(Texture.hatch(box, swatch.density()), ink, Texture.LINE));
                frame(box);
            }
            case STIPPLE -> {
                drawn.add(new DrawnItem.Dots(Texture.stipple(box, swatch.density()), ink));
                frame(box);
            }
            case THROUGH -> {
                drawn.add(DrawnItem.Filled.of(Texture.holes(new Path2D.Double(box)), palette.grave()));
                drawn.add(DrawnItem.Stroked.of(box, palette.grave(), 2.4));
            }
            case COMPLETE -> {
                drawn.add(DrawnItem.Filled.of(box, colors.fill(ZoneLook.of(Surface.COMPLETE))));
                frame(box);
            }
            case MISSING -> {
                drawn.add(DrawnItem.Filled.of(box, colors.missing()));
                frame(box);
            }
            case PARTIAL -> {
                drawn.add(DrawnItem.Stroked.texture(Texture.bands(box), colors.missing(), Texture.BAND));
                frame(box);
            }
        }
    }

    private void frame(Rectangle2D box) {
        drawn.add(DrawnItem.Stroked.of(box, colors.palette().gap(), 0.6));
    }

    /** The text in lines that fit a width. */
    private List<String> wrapped(String text, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && measure.width(longer, SIZE, false) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private void words(String text, double left, double baseline, Color color) {
        drawn.add(new DrawnItem.Words(text, left, baseline, SIZE, false, color, measure.width(text, SIZE, false)));
    }
}
